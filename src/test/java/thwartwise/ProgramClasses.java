package thwartwise;

import com.tngtech.archunit.ArchConfiguration;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import thwartwise.shell.Main;

/** The compiled program, read once for every test that looks at its classes. */
final class ProgramClasses {
  static final JavaClasses ALL = read();

  private ProgramClasses() {}

  /** Of a library only names are asked for, so its classes are not read as well. */
  private static JavaClasses read() {
    ArchConfiguration.get().setResolveMissingDependenciesFromClassPath(false);
    return new ClassFileImporter()
        .importUrl(Main.class.getProtectionDomain().getCodeSource().getLocation());
  }
}
