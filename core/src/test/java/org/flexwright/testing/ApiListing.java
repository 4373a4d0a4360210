package org.flexwright.testing;

import java.io.IOException;
import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleFinder;
import java.lang.reflect.AnnotatedArrayType;
import java.lang.reflect.AnnotatedElement;
import java.lang.reflect.AnnotatedParameterizedType;
import java.lang.reflect.AnnotatedType;
import java.lang.reflect.AnnotatedTypeVariable;
import java.lang.reflect.AnnotatedWildcardType;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Parameter;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.lang.reflect.TypeVariable;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.StringJoiner;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The public and protected types and members of a module's exported packages, as sorted text.
 *
 * <p>Packages exported to everybody are listed; those exported to named modules are not. What may
 * be null is marked with {@code ?}.
 */
public final class ApiListing {
  private ApiListing() {}

  /** Lists the module that lies in a folder of class files, which must be on the class path. */
  public static String of(Path classes) throws IOException {
    ModuleDescriptor module = ModuleFinder.of(classes).findAll().iterator().next().descriptor();
    StringBuilder text = new StringBuilder();
    TreeSet<String> packages = new TreeSet<>();
    module.exports().stream().filter(e -> !e.isQualified()).forEach(e -> packages.add(e.source()));
    for (String name : packages) {
      text.append("package ").append(name).append("\n\n");
      for (Class<?> type : publicTypes(classes, name)) {
        append(text, type);
      }
    }
    return text.toString();
  }

  /**
   * Compares a listing with the committed one.
   *
   * @return nothing if they are equal, otherwise the first lines that differ
   */
  public static String difference(List<String> listed, List<String> found) {
    StringBuilder text = new StringBuilder();
    int shown = 0;
    int i = 0;
    int k = 0;
    while (shown < 20 && (i < listed.size() || k < found.size())) {
      String left = i < listed.size() ? listed.get(i) : null;
      String right = k < found.size() ? found.get(k) : null;
      if (left != null && left.equals(right)) {
        i++;
        k++;
        continue;
      }
      boolean gone =
          right == null || (left != null && !found.subList(k, found.size()).contains(left));
      text.append(gone ? "  - " + left : "  + " + right).append('\n');
      if (gone) {
        i++;
      } else {
        k++;
      }
      shown++;
    }
    return text.toString();
  }

  private static List<Class<?>> publicTypes(Path classes, String name) throws IOException {
    List<Class<?>> types = new ArrayList<>();
    Path folder = classes.resolve(name.replace('.', '/'));
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.sorted().toList()) {
        String simple = file.getFileName().toString();
        if (simple.endsWith(".class") && !simple.equals("package-info.class")) {
          Class<?> type = load(name + "." + simple.substring(0, simple.length() - 6));
          if (isVisible(type)) {
            types.add(type);
          }
        }
      }
    }
    types.sort((a, b) -> a.getName().compareTo(b.getName()));
    return types;
  }

  private static Class<?> load(String name) {
    try {
      return Class.forName(name, false, ApiListing.class.getClassLoader());
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException(name + " is not on the class path of the tests", e);
    }
  }

  private static boolean isVisible(Class<?> type) {
    if (type.isAnonymousClass() || type.isLocalClass() || type.isSynthetic()) {
      return false;
    }
    Class<?> outer = type.getDeclaringClass();
    return isVisible(type.getModifiers()) && (outer == null || isVisible(outer));
  }

  private static boolean isVisible(int modifiers) {
    return Modifier.isPublic(modifiers) || Modifier.isProtected(modifiers);
  }

  private static void append(StringBuilder text, Class<?> type) {
    text.append(header(type)).append('\n');
    TreeSet<String> members = new TreeSet<>();
    for (Field f : type.getDeclaredFields()) {
      if (isVisible(f.getModifiers()) && !f.isSynthetic() && !f.isEnumConstant()) {
        members.add(words(f, f.getModifiers()) + text(f.getAnnotatedType()) + " " + f.getName());
      }
    }
    for (Constructor<?> c : type.getDeclaredConstructors()) {
      if (isVisible(c.getModifiers()) && !c.isSynthetic()) {
        members.add(words(c, c.getModifiers()) + "new" + parameters(c));
      }
    }
    for (Method m : type.getDeclaredMethods()) {
      if (isVisible(m.getModifiers()) && !m.isSynthetic() && !isImplied(type, m)) {
        members.add(
            words(m, m.getModifiers() & ~Modifier.TRANSIENT & ~Modifier.VOLATILE)
                + (m.isDefault() ? "default " : "")
                + variables(m.getTypeParameters())
                + text(m.getAnnotatedReturnType())
                + " "
                + m.getName()
                + parameters(m));
      }
    }
    if (type.isEnum()) {
      Object[] constants = type.getEnumConstants();
      StringJoiner names = new StringJoiner(", ");
      Arrays.stream(constants).forEach(c -> names.add(((Enum<?>) c).name()));
      text.append("  ").append(names).append('\n');
    }
    members.forEach(m -> text.append("  ").append(m).append('\n'));
    text.append('\n');
  }

  /** Tells whether every enum or record of this header has the method. */
  private static boolean isImplied(Class<?> type, Method m) {
    if (type.isEnum()) {
      return m.getName().equals("values") || m.getName().equals("valueOf");
    }
    if (!type.isRecord()) {
      return false;
    }
    boolean made = Modifier.isFinal(m.getModifiers());
    boolean accessor =
        m.getParameterCount() == 0
            && Arrays.stream(type.getRecordComponents()).anyMatch(c -> c.getAccessor().equals(m));
    return accessor || (made && List.of("equals", "hashCode", "toString").contains(m.getName()));
  }

  private static String header(Class<?> type) {
    StringBuilder text = new StringBuilder();
    int hidden = Modifier.INTERFACE;
    if (type.isInterface()) {
      hidden |= Modifier.ABSTRACT | Modifier.STATIC;
    } else if (type.isRecord() || type.isEnum()) {
      hidden |= Modifier.FINAL | Modifier.STATIC | Modifier.ABSTRACT;
    }
    text.append(words(type, type.getModifiers() & ~hidden));
    text.append(type.isSealed() ? "sealed " : "");
    text.append(
        type.isAnnotation()
            ? "@interface "
            : type.isInterface()
                ? "interface "
                : type.isRecord() ? "record " : type.isEnum() ? "enum " : "class ");
    text.append(name(type)).append(variables(type.getTypeParameters()));
    if (type.isRecord()) {
      StringJoiner components = new StringJoiner(", ", "(", ")");
      for (RecordComponent c : type.getRecordComponents()) {
        components.add(text(c.getAnnotatedType()) + " " + c.getName());
      }
      text.append(components);
    }
    AnnotatedType above = type.getAnnotatedSuperclass();
    if (above != null && !type.isRecord() && !type.isEnum() && above.getType() != Object.class) {
      text.append(" extends ").append(text(above));
    }
    if (type.getAnnotatedInterfaces().length > 0) {
      text.append(type.isInterface() ? " extends " : " implements ");
      text.append(join(type.getAnnotatedInterfaces(), ", "));
    }
    if (type.isSealed()) {
      TreeSet<String> permitted = new TreeSet<>();
      Arrays.stream(type.getPermittedSubclasses()).forEach(p -> permitted.add(name(p)));
      text.append(" permits ").append(String.join(", ", permitted));
    }
    return text.toString();
  }

  private static String words(AnnotatedElement element, int modifiers) {
    String mark = element.isAnnotationPresent(Deprecated.class) ? "@Deprecated " : "";
    int shown = modifiers & ~(Modifier.SYNCHRONIZED | Modifier.NATIVE | Modifier.STRICT);
    String words = Modifier.toString(shown).replaceAll("\\bpublic ?", "").strip();
    return words.isEmpty() ? mark : mark + words + " ";
  }

  private static String variables(TypeVariable<?>[] variables) {
    if (variables.length == 0) {
      return "";
    }
    StringJoiner text = new StringJoiner(", ", "<", ">");
    for (TypeVariable<?> v : variables) {
      String bounds = join(v.getAnnotatedBounds(), " & ");
      text.add(bounds.equals("Object") ? v.getName() : v.getName() + " extends " + bounds);
    }
    return text.toString();
  }

  private static String parameters(Executable e) {
    StringJoiner text = new StringJoiner(", ", "(", ")");
    for (Parameter p : e.getParameters()) {
      String type = text(p.getAnnotatedType());
      text.add(p.isVarArgs() ? type.replaceAll("\\[]$", "...") : type);
    }
    String thrown = join(e.getAnnotatedExceptionTypes(), ", ");
    return thrown.isEmpty() ? text.toString() : text + " throws " + thrown;
  }

  private static String join(AnnotatedType[] types, String between) {
    StringJoiner text = new StringJoiner(between);
    Arrays.stream(types).forEach(t -> text.add(text(t)));
    return text.toString();
  }

  private static String text(AnnotatedType type) {
    String mark = type.isAnnotationPresent(Nullable.class) ? "?" : "";
    if (type instanceof AnnotatedArrayType a) {
      return text(a.getAnnotatedGenericComponentType()) + "[]" + mark;
    }
    if (type instanceof AnnotatedParameterizedType p) {
      Type raw = ((ParameterizedType) p.getType()).getRawType();
      String arguments = join(p.getAnnotatedActualTypeArguments(), ", ");
      return name((Class<?>) raw) + "<" + arguments + ">" + mark;
    }
    if (type instanceof AnnotatedWildcardType w) {
      String below = join(w.getAnnotatedLowerBounds(), " & ");
      String above = join(w.getAnnotatedUpperBounds(), " & ");
      String bound = above.isEmpty() || above.equals("Object") ? "any" : "any extends " + above;
      return below.isEmpty() ? bound : "any super " + below;
    }
    if (type instanceof AnnotatedTypeVariable v) {
      return ((TypeVariable<?>) v.getType()).getName() + mark;
    }
    return name((Class<?>) type.getType()) + mark;
  }

  /** Gives a type's name: short for those of the Java platform's common packages. */
  private static String name(Class<?> type) {
    String name = type.getCanonicalName() == null ? type.getName() : type.getCanonicalName();
    return name.replaceAll("^java\\.(lang|util|util\\.function|util\\.stream|io)\\.(?=[A-Z])", "");
  }
}
