package org.footwell.catalogue;

import picocli.CommandLine.IVersionProvider;

/** The version in the manifest of the jar. */
final class VersionProvider implements IVersionProvider {

  static final String NUMBER =
      number(VersionProvider.class.getPackage().getImplementationVersion());

  private static String number(String inManifest) {
    return inManifest == null ? "0" : inManifest;
  }

  @Override
  public String[] getVersion() {
    return new String[] {"footwell-catalogue " + NUMBER};
  }
}
