package thwartwise.shell;

import java.lang.module.ModuleDescriptor;
import java.util.Optional;

/** The version of the program, from the jar's manifest or the module of the image. */
record ProgramVersion(String number) {

  /** There is no manifest for loose classes. */
  static final ProgramVersion UNPACKAGED = new ProgramVersion("unpackaged");

  static ProgramVersion ofThisJar() {
    return Optional.ofNullable(ProgramVersion.class.getPackage().getImplementationVersion())
        .or(ProgramVersion::ofThisModule)
        .map(ProgramVersion::new)
        .orElse(UNPACKAGED);
  }

  private static Optional<String> ofThisModule() {
    return Optional.ofNullable(ProgramVersion.class.getModule().getDescriptor())
        .flatMap(ModuleDescriptor::rawVersion);
  }
}
