package curbwatt.charts.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class ComplaintsTest {

    @Test
    void ourFaultIsOneLineAndHowToReport() {
        StringWriter err = new StringWriter();
        int exitCode = new Complaints(new PrintWriter(err, true), () -> false).on(new IllegalStateException("oops"));
        assertThat(exitCode).isEqualTo(1);
        assertThat(err.toString())
                .contains("IllegalStateException: oops", "report")
                .doesNotContain("\tat ");
    }

    @Test
    void debugAddsWhere() {
        StringWriter err = new StringWriter();
        new Complaints(new PrintWriter(err, true), () -> true).on(new IllegalStateException("oops"));
        assertThat(err.toString()).contains("\tat curbwatt.charts.command.ComplaintsTest");
    }
}
