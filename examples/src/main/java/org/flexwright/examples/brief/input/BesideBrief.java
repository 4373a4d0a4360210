package org.flexwright.examples.brief.input;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** Files that a brief names: in its own folder and nowhere else. */
record BesideBrief(Path folder) {

  private static final String ALLOWED = "the name of a file in the folder of the brief";

  /** A file by its bare name. What only looks as if it were in the folder is refused too. */
  Path file(Entry entry, String name) {
    String words = entry.text(name, ALLOWED);
    String at = entry.path(name);
    try {
      Path given = Path.of(words);
      boolean bare = given.getRoot() == null && given.getNameCount() == 1;
      if (!bare || !given.normalize().equals(given) || words.indexOf('\\') >= 0) {
        throw BriefException.at(at, "is \"" + words + '"', ALLOWED);
      }
      Path file = folder.resolve(given);
      if (!Files.isRegularFile(file)) {
        throw BriefException.at(at, "names \"" + words + "\", which is not there", ALLOWED);
      }
      if (!folder.toRealPath().equals(file.toRealPath().getParent())) {
        throw BriefException.at(at, "names \"" + words + "\", a link out of the folder", ALLOWED);
      }
      return file;
    } catch (InvalidPathException e) {
      throw BriefException.at(at, "is \"" + words + '"', ALLOWED);
    } catch (IOException e) {
      throw BriefException.at(at, "cannot be read (" + e.getMessage() + ")", ALLOWED);
    }
  }
}
