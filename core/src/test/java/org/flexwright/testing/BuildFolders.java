package org.flexwright.testing;

import java.nio.file.Path;

/** The folders of the module whose tests run. */
public final class BuildFolders {
  private BuildFolders() {}

  /** Gives a place in the module's build folder. */
  public static Path target(String inside) {
    return Path.of(System.getProperty("flexwright.target", "target")).resolve(inside);
  }

  /** Gives the project's folder. */
  public static Path root() {
    return Path.of(System.getProperty("flexwright.root", "..")).toAbsolutePath().normalize();
  }

  /** Gives the name of each module's build folder. */
  public static String targetName() {
    return System.getProperty("flexwright.target.name", "target");
  }
}
