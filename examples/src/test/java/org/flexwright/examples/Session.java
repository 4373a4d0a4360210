package org.flexwright.examples;

import java.io.File;
import java.util.List;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.EvalException;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;

/** A JShell session on the class path of the tests that takes no error. */
final class Session implements AutoCloseable {
  /** What JShell imports when it is started with {@code --startup DEFAULT}. */
  private static final List<String> DEFAULT_IMPORTS =
      List.of(
          "import java.io.*;",
          "import java.math.*;",
          "import java.net.*;",
          "import java.nio.file.*;",
          "import java.util.*;",
          "import java.util.concurrent.*;",
          "import java.util.function.*;",
          "import java.util.prefs.*;",
          "import java.util.regex.*;",
          "import java.util.stream.*;");

  private final JShell shell = JShell.builder().executionEngine("local").build();

  Session() {
    for (String entry : System.getProperty("java.class.path").split(File.pathSeparator, -1)) {
      shell.addToClasspath(entry);
    }
    feed("DEFAULT", 0, DEFAULT_IMPORTS);
  }

  /**
   * Feeds lines as they would be typed: a snippet runs as soon as it is complete at a line's end.
   *
   * @param file named in errors
   * @param before lines of the file before the first one
   */
  void feed(String file, int before, List<String> lines) {
    StringBuilder typed = new StringBuilder();
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      String where = file + ":" + (before + i + 1) + ": ";
      if (typed.isEmpty() && line.startsWith("/") && !line.matches("/[/*].*")) {
        throw new AssertionError(where + "command of the tool inside a Java block: " + line);
      }
      typed.append(line).append('\n');
      String rest = runComplete(where, typed.toString());
      typed.setLength(0);
      typed.append(rest);
    }
    if (!typed.toString().isBlank()) {
      throw new AssertionError(file + ": incomplete at the end: " + typed);
    }
  }

  private String runComplete(String where, String typed) {
    String rest = typed;
    while (!rest.isBlank()) {
      CompletionInfo info = shell.sourceCodeAnalysis().analyzeCompletion(rest);
      if (!info.completeness().isComplete()) {
        return info.completeness().name().equals("EMPTY") ? "" : rest;
      }
      shell.eval(info.source()).forEach(event -> mustBeGood(where, event));
      rest = info.remaining();
    }
    return "";
  }

  private void mustBeGood(String where, SnippetEvent event) {
    String source = event.snippet().source().strip();
    if (event.status() != Snippet.Status.VALID) {
      StringBuilder text = new StringBuilder(where + event.status() + ": " + source);
      shell.diagnostics(event.snippet()).forEach(d -> text.append('\n').append(d.getMessage(null)));
      if (event.snippet() instanceof DeclarationSnippet d) {
        shell.unresolvedDependencies(d).forEach(name -> text.append("\nmissing ").append(name));
      }
      throw new AssertionError(text.toString());
    }
    if (event.exception() != null) {
      String name =
          event.exception() instanceof EvalException e
              ? e.getExceptionClassName()
              : event.exception().getClass().getName();
      throw new AssertionError(
          where + source + "\nthrew " + name + ": " + event.exception().getMessage(),
          event.exception());
    }
  }

  @Override
  public void close() {
    shell.close();
  }
}
