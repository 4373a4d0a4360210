package org.flexwright.examples;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.flexwright.testing.BuildFolders;

/**
 * What a started tool of this JDK printed and how it ended.
 *
 * @param exit its exit code
 * @param output what it printed
 */
record ProcessRun(int exit, String output) {

  /** Runs a tool of the running JDK in the project's folder. */
  static ProcessRun of(String tool, List<String> arguments) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", tool).toString());
    command.addAll(arguments);
    Process process =
        new ProcessBuilder(command)
            .directory(BuildFolders.root().toFile())
            .redirectErrorStream(true)
            .start();
    process.getOutputStream().close();
    try {
      String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      if (!process.waitFor(2, TimeUnit.MINUTES)) {
        throw new AssertionError(command + " does not end:\n" + output);
      }
      return new ProcessRun(process.exitValue(), output);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new AssertionError("interrupted", e);
    } finally {
      process.destroyForcibly();
    }
  }
}
