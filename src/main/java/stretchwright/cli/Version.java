package stretchwright.cli;

import picocli.CommandLine.IVersionProvider;
import stretchwright.report.Program;

/** For --version. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        return new String[] {"stretchwright " + Program.VERSION};
    }
}
