package org.flexwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Compiles and runs a small consumer on the module path, as a user of the modules would. */
final class ModulePathIT {
  private static final String DESCRIPTOR =
      """
      module consumer {
        requires org.flexwright.shells;
        requires org.flexwright.lattice;
      }
      """;

  /** Links every public class of the exported packages and prints how many there are. */
  private static final String MAIN =
      """
      package consumer;

      import java.lang.module.ModuleReader;
      import java.lang.module.ResolvedModule;

      public final class Main {
        public static void main(String[] args) throws Exception {
          for (String name : new String[] {"core", "shells", "lattice"}) {
            ResolvedModule resolved =
                ModuleLayer.boot().configuration().findModule("org.flexwright." + name).orElseThrow();
            Module module = ModuleLayer.boot().findModule(resolved.name()).orElseThrow();
            int count = 0;
            try (ModuleReader reader = resolved.reference().open()) {
              for (String file : reader.list().filter(f -> f.endsWith(".class")).toList()) {
                String type = file.substring(0, file.length() - 6).replace('/', '.');
                int dot = type.lastIndexOf('.');
                if (dot > 0 && module.isExported(type.substring(0, dot), Main.class.getModule())) {
                  Class<?> loaded = Class.forName(module, type);
                  Class.forName(type, true, loaded.getClassLoader());
                  loaded.getMethods();
                  loaded.getConstructors();
                  count++;
                }
              }
            }
            System.out.println(module.getName() + " " + (module.isNamed() && count > 0));
          }
          System.out.println("consumer in " + Main.class.getModule());
        }
      }
      """;

  @Test
  void modulesServeConsumerOnModulePath(@TempDir Path folder) throws IOException {
    Path sources = Files.createDirectories(folder.resolve("src"));
    Path descriptor = Files.writeString(sources.resolve("module-info.java"), DESCRIPTOR);
    Path main = Files.createDirectories(sources.resolve("consumer")).resolve("Main.java");
    Files.writeString(main, MAIN);
    Path classes = folder.resolve("classes");
    ProcessRun compiled =
        ProcessRun.of(
            "javac",
            List.of(
                "-encoding",
                "UTF-8",
                "-p",
                modulePath(),
                "-d",
                classes.toString(),
                descriptor.toString(),
                main.toString()));
    assertThat(compiled.exit()).as(compiled.output()).isZero();
    ProcessRun run =
        ProcessRun.of(
            "java",
            List.of(
                "-p", modulePath() + File.pathSeparator + classes, "-m", "consumer/consumer.Main"));
    assertThat(run.output().lines())
        .contains(
            "org.flexwright.core true",
            "org.flexwright.shells true",
            "org.flexwright.lattice true",
            "consumer in module consumer");
    assertThat(run.exit()).isZero();
  }

  /**
   * Gives the project's modules and the libraries they need, out of the class path of the tests.
   */
  private static String modulePath() {
    List<String> path = new ArrayList<>();
    for (String entry : System.getProperty("java.class.path").split(File.pathSeparator, -1)) {
      String name = Path.of(entry).getFileName().toString();
      boolean ours =
          name.matches("flexwright-(core|shells|lattice)-.*\\.jar") && !name.endsWith("-tests.jar");
      if (ours || name.matches("(commons-math3|ejml-\\w+)-.*\\.jar")) {
        path.add(entry);
      }
    }
    assertThat(path).hasSizeGreaterThanOrEqualTo(4);
    return String.join(File.pathSeparator, path);
  }
}
