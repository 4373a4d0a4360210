package org.flexwright.examples.brief;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.flexwright.examples.brief.answer.BriefAnswer;
import org.flexwright.examples.brief.input.BriefException;
import org.flexwright.examples.brief.input.BriefReader;
import org.flexwright.examples.brief.report.BriefFiles;

/**
 * Reads a design brief, answers it, prints the answer and writes a report.
 *
 * <p>Exit code 0 if the brief was answered, whatever the verdicts; 2 if the brief is refused or the
 * files cannot be written, with one line that says why.
 */
public final class DesignBrief {

  private DesignBrief() {}

  /**
   * Answers a brief.
   *
   * @param args the brief's file and the folder for the report
   */
  public static void main(String[] args) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.US_ASCII);
    int code = run(args, out);
    if (code != 0) {
      System.exit(code);
    }
  }

  /**
   * The same without ending the machine.
   *
   * @param args the brief's file and the folder for the report
   * @param out where to print
   * @return the exit code
   */
  static int run(String[] args, PrintStream out) {
    try {
      if (args.length != 2) {
        throw BriefException.at("command", "has " + args.length + " words", "a brief and a folder");
      }
      BriefAnswer answer = BriefAnswer.of(BriefReader.read(Path.of(args[0])));
      out.print(BriefFiles.write(answer, Path.of(args[1])));
      return 0;
    } catch (BriefException e) {
      out.println(ascii("Brief refused: " + e.getMessage()));
    } catch (InvalidPathException e) {
      out.println(ascii("Brief refused: path " + e.getMessage()));
    } catch (IOException e) {
      out.println(ascii("Report not written: " + e));
    }
    return 2;
  }

  private static String ascii(String words) {
    return words.replaceAll("[^\\x20-\\x7e]", "?");
  }
}
