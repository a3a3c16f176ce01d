package pilefolio.cli;

import picocli.CommandLine.IVersionProvider;

/** The version of the program, from the jar. */
final class Version implements IVersionProvider {
  @Override
  public String[] getVersion() {
    return new String[] {"pilefolio " + number()};
  }

  static String number() {
    String version = Version.class.getPackage().getImplementationVersion();
    return version == null ? "0.1.0" : version;
  }
}
