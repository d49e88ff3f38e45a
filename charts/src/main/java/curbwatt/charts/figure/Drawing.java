package curbwatt.charts.figure;

import java.awt.Graphics2D;

/** What is drawn on a sheet of a given size. */
interface Drawing {

    /** Draws onto a sheet whose origin is its upper left corner (px). */
    void draw(Graphics2D sheet);
}
