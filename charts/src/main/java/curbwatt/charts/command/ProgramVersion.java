package curbwatt.charts.command;

import curbwatt.charts.output.ResultJson;
import picocli.CommandLine.IVersionProvider;

/** What {@code --version} says. */
final class ProgramVersion implements IVersionProvider {

    @Override
    public String[] getVersion() {
        String version = ProgramVersion.class.getPackage().getImplementationVersion();
        return new String[] {
            "curbwatt " + (version == null ? "(not packaged)" : version) + ", result.json version " + ResultJson.VERSION
        };
    }
}
