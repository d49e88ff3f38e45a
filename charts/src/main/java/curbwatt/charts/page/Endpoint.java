package curbwatt.charts.page;

import java.io.IOException;

/** Answers one kind of question. */
interface Endpoint {

    /** The one method with which it may be asked. */
    String method();

    /** Answers. What it throws, the {@link Gate} turns into an answer. */
    void answer(Visit visit) throws IOException;
}
