package curbwatt.charts.command;

/** The page of the command line: its first block of text under each heading is what {@code --help} prints. */
final class ManualPage {

    private static final String OPENING = "```text\n";
    private static final String CLOSING = "```\n";

    private ManualPage() {}

    /**
     * The page with other text in a block.
     *
     * @param page the page
     * @param heading how the block's heading ends
     * @param help the text
     */
    static String with(String page, String heading, String help) {
        int at = page.indexOf(heading + "\n");
        if (at < 0) {
            throw new AssertionError("docs/command-line.md has no heading that ends with \"" + heading
                    + "\"; add one with an empty block of text below");
        }
        int from = page.indexOf(OPENING, at) + OPENING.length();
        int to = page.indexOf(CLOSING, from);
        return page.substring(0, from) + help + page.substring(to);
    }
}
