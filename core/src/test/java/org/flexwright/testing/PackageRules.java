package org.flexwright.testing;

import java.io.DataInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Which package of the project uses which, read from class files and from imports.
 *
 * @param uses for each package, without the leading {@code org.flexwright.}, those it names
 */
public record PackageRules(Map<String, Set<String>> uses) {
  private static final String ROOT = "org.flexwright.";
  private static final Pattern NAMED_CLASS =
      Pattern.compile("org/flexwright/((?:[a-z]\\w*/)*)[A-Z]");
  private static final Pattern NAMED_IMPORT =
      Pattern.compile("^import (?:static )?org\\.flexwright\\.((?:[a-z]\\w*\\.)*)[A-Z*].*");

  /** Reads a folder of class files and a folder of sources. */
  public static PackageRules of(Path classes, Path sources) throws IOException {
    Map<String, Set<String>> uses = new TreeMap<>();
    for (Path file : files(classes, ".class")) {
      if (file.endsWith("module-info.class")) {
        continue;
      }
      Set<String> used = uses.computeIfAbsent(packageOf(classes, file), p -> new TreeSet<>());
      for (String text : constants(file)) {
        Matcher named = NAMED_CLASS.matcher(text);
        while (named.find()) {
          add(used, named.group(1).replace('/', '.'));
        }
      }
    }
    for (Path file : files(sources, ".java")) {
      if (file.endsWith("module-info.java")) {
        continue;
      }
      Set<String> used = uses.computeIfAbsent(packageOf(sources, file), p -> new TreeSet<>());
      for (String line : Files.readAllLines(file)) {
        Matcher named = NAMED_IMPORT.matcher(line);
        if (named.matches()) {
          add(used, named.group(1));
        }
      }
    }
    uses.forEach((one, used) -> used.remove(one));
    return new PackageRules(uses);
  }

  /**
   * Gives each breach of an order in which a package may use only those before it.
   *
   * @param order all packages below {@code prefix}, in their order
   * @param prefix the start of the packages in question, empty for core
   */
  public List<String> breaches(String prefix, List<String> order) {
    List<String> full = order.stream().map(p -> prefix + p).toList();
    List<String> breaches = new ArrayList<>();
    uses.forEach(
        (one, used) -> {
          int place = full.indexOf(one);
          if (place < 0) {
            breaches.add(ROOT + one + " is not in the order of packages: give it its place there");
            return;
          }
          for (String other : used) {
            int at = full.indexOf(other);
            if (at < 0 && !prefix.isEmpty() && isCore(other)) {
              continue;
            }
            if (at < 0 || at > place) {
              breaches.add(ROOT + one + " uses " + ROOT + other + ", which comes after it");
            }
          }
        });
    return breaches;
  }

  private static boolean isCore(String name) {
    return !name.matches("(shells|lattice|examples|benchmarks)(\\..*)?");
  }

  private static void add(Set<String> used, String withDot) {
    if (!withDot.isEmpty()) {
      used.add(withDot.substring(0, withDot.length() - 1));
    }
  }

  private static String packageOf(Path top, Path file) {
    String name = top.relativize(file.getParent()).toString().replace('\\', '/').replace('/', '.');
    return name.startsWith(ROOT) ? name.substring(ROOT.length()) : name;
  }

  private static List<Path> files(Path top, String ending) throws IOException {
    if (!Files.isDirectory(top)) {
      throw new IllegalArgumentException("no folder " + top);
    }
    try (Stream<Path> all = Files.walk(top)) {
      return all.filter(f -> f.toString().endsWith(ending)).sorted().toList();
    }
  }

  /** Reads the text constants of a class file: names, descriptors and signatures are among them. */
  private static List<String> constants(Path file) throws IOException {
    List<String> texts = new ArrayList<>();
    try (DataInputStream in = new DataInputStream(Files.newInputStream(file))) {
      in.skipNBytes(8);
      int count = in.readUnsignedShort();
      for (int i = 1; i < count; i++) {
        int tag = in.readUnsignedByte();
        switch (tag) {
          case 1 -> texts.add(in.readUTF());
          case 7, 8, 16, 19, 20 -> in.skipNBytes(2);
          case 15 -> in.skipNBytes(3);
          case 3, 4, 9, 10, 11, 12, 17, 18 -> in.skipNBytes(4);
          case 5, 6 -> {
            in.skipNBytes(8);
            i++;
          }
          default -> throw new IOException(file + ": unknown constant " + tag);
        }
      }
    }
    return texts;
  }
}
