package org.flexwright.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Rules that each library module keeps; a test in each module extends this. */
public abstract class ModuleRules {
  private final String module;
  private final String prefix;
  private final List<String> order;

  /**
   * Sets the module's name and packages.
   *
   * @param module its name
   * @param prefix the start of its packages after {@code org.flexwright.}, empty for core
   * @param order its packages; each may use only those before it
   */
  protected ModuleRules(String module, String prefix, List<String> order) {
    this.module = module;
    this.prefix = prefix;
    this.order = List.copyOf(order);
  }

  @Test
  final void packagesUseOnlyThoseBeforeThem() throws IOException {
    PackageRules rules =
        PackageRules.of(BuildFolders.target("classes"), Path.of("src", "main", "java"));
    assertThat(rules.breaches(prefix, order)).isEmpty();
  }

  @Test
  final void publicApiIsAsListed() throws IOException {
    Path file = Path.of("src", "test", "resources", "api", module + ".txt");
    String found = ApiListing.of(BuildFolders.target("classes"));
    if (Boolean.getBoolean("api.update")) {
      Files.createDirectories(file.getParent());
      Files.writeString(file, found);
    }
    List<String> listed = Files.exists(file) ? Files.readAllLines(file) : List.of();
    String difference = ApiListing.difference(listed, found.lines().toList());
    if (!difference.isEmpty()) {
      throw new AssertionError(
          "The public API of %s differs from %s:%n%sIf that is meant: mvn -B -ntp -Dapi.update=true test"
              .formatted(module, file, difference));
    }
  }

  @Test
  final void everyPropertyNamesItsSeed() throws IOException {
    List<String> without = new ArrayList<>();
    Path tests = BuildFolders.target("test-classes");
    try (Stream<Path> files = Files.walk(tests)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".class")).sorted().toList()) {
        String path = tests.relativize(file).toString().replace('\\', '/');
        String name = path.substring(0, path.length() - 6).replace('/', '.');
        for (Method m : methods(name)) {
          Property property = m.getAnnotation(Property.class);
          if (property != null && property.seed().equals(Property.SEED_NOT_SET)) {
            without.add(name + "." + m.getName());
          }
        }
      }
    }
    assertThat(without).as("properties without a fixed seed").isEmpty();
  }

  private static List<Method> methods(String name) {
    try {
      Class<?> type = Class.forName(name, false, ModuleRules.class.getClassLoader());
      return Arrays.asList(type.getDeclaredMethods());
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException(e);
    }
  }
}
