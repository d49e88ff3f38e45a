package curbwatt.charts.report;

import java.util.ArrayList;
import java.util.List;

/**
 * A table of the report.
 *
 * @param id anchor in the page
 * @param title heading above it
 * @param lead a sentence under the heading; may be empty
 * @param columns columns from the left; the first names the row
 * @param rows rows from the top
 */
public record Table(String id, String title, String lead, List<Column> columns, List<Row> rows) {

    /**
     * A column.
     *
     * @param head its head, unit included
     * @param number whether it holds numbers, which stand to the right
     */
    public record Column(String head, boolean number) {}

    /**
     * A row.
     *
     * @param name first cell
     * @param cells the others
     * @param marked whether it stands out; one of its cells says why
     */
    public record Row(String name, List<Cell> cells, boolean marked) {}

    /**
     * A cell.
     *
     * @param text what it says
     * @param number whether it stands to the right
     */
    public record Cell(String text, boolean number) {}

    /** Copies the lists. */
    public Table {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /** The same table with one row that stands out. */
    Table marking(int index) {
        List<Row> marked = new ArrayList<>(rows);
        marked.set(index, new Row(rows.get(index).name(), rows.get(index).cells(), true));
        return new Table(id, title, lead, columns, marked);
    }

    /**
     * Makes a table of texts.
     *
     * @param heads heads of the columns; one that begins with {@code #} is a column of numbers, without that sign
     * @param lines texts of the rows, as many in each as there are heads
     */
    static Table of(String id, String title, String lead, List<String> heads, List<List<String>> lines) {
        List<Column> columns = heads.stream()
                .map(head -> head.startsWith("#") ? new Column(head.substring(1), true) : new Column(head, false))
                .toList();
        List<Row> rows = new ArrayList<>();
        for (List<String> line : lines) {
            List<Cell> cells = new ArrayList<>();
            for (int i = 1; i < columns.size(); i++) {
                cells.add(new Cell(line.get(i), columns.get(i).number()));
            }
            rows.add(new Row(line.get(0), cells, false));
        }
        return new Table(id, title, lead, columns, rows);
    }
}
