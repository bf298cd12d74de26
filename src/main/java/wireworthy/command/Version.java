package wireworthy.command;

import picocli.CommandLine.IVersionProvider;

/** Reads the version from the jar the program was started from. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        final String version = Version.class.getPackage().getImplementationVersion();
        return new String[] {"Wireworthy " + (version == null ? "(not packaged)" : version)};
    }
}
