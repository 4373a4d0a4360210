package org.flexwright.grade;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;
import org.flexwright.internal.Library;
import org.flexwright.internal.Require;
import org.flexwright.law.Deformation;
import org.flexwright.law.LawFamily;
import org.flexwright.quantity.Density;

/**
 * Grades as text: written, kept in a file (UTF-8) or sent, and read again to the last bit.
 *
 * <p>Format 1: one {@code key = value} a line in any order, notes after #, texts in double quotes,
 * SI units behind the numbers that have one. Keys: format, library and data (the stamps of the
 * writer), name, generic, density, poisson, strain-at-break, tested, factor.* (the
 * ln-standard-deviations), correlation.*, process and process.*, law and law.*, sources and
 * source.*, caveats and caveat.*. A law made of another one holds it under law.of.
 *
 * <p>Saved are laws of the families of {@link org.flexwright.law.classical.LawFamilies} and of
 * families given here, Ogden's of any number of terms, stress curves, and each of them scaled,
 * ended at its data or softened by cycles. Any other law or process is refused when written. An
 * unknown version, an unknown, missing or repeated key, a bad number and a text too long are
 * refused when read, each by line and key. A generic grade that was written with other built-in
 * figures gets a caveat.
 *
 * <p>Immutable and thread-safe.
 *
 * <p>JShell: {@code GradeText.of().read(GradeText.of().write(Grade.polyurethane(ShoreA.of(95))))}
 */
public final class GradeText {

  private static final int FORMAT = 1;

  private final LawText laws;

  private GradeText(List<LawFamily> own) {
    laws = new LawText(own);
  }

  /**
   * A writer and reader that knows families beside the built-in ones.
   *
   * @param own families of your own, none for the built-in ones alone
   * @return the writer and reader
   * @throws org.flexwright.InvalidInputException if a name is not made of letters, digits and
   *     hyphens or is taken
   */
  public static GradeText of(LawFamily... own) {
    return new GradeText(List.of(own));
  }

  /**
   * A grade as text.
   *
   * @param grade the grade
   * @return lines ending in a line feed
   * @throws org.flexwright.InvalidInputException if its law or process cannot be saved
   */
  public String write(Grade grade) {
    TextLines to = new TextLines();
    to.note(grade.name() + ": " + grade.law());
    to.word("format", Integer.toString(FORMAT));
    to.word("library", Library.VERSION);
    to.word("data", Integer.toString(Library.DATA));
    to.text("name", grade.name());
    to.word("generic", grade.generic() ? "yes" : "no");
    to.number("density", grade.density().kgPerM3(), "kg/m3");
    to.number("poisson", grade.poisson(), "");
    to.number("strain-at-break", grade.strainAtBreak(false), "");
    to.word(
        "tested",
        grade.tested().isEmpty()
            ? "unknown"
            : grade.tested().stream()
                .sorted()
                .map(EvidenceText::word)
                .collect(Collectors.joining(", ")));
    EvidenceText.writeFactors(to, grade.materialFactors());
    ProcessText.write(to, "process", grade.process(), 1);
    laws.write(to, "law", grade.law(), 1);
    EvidenceText.writeSources(to, grade.sources());
    EvidenceText.writeCaveats(to, grade.caveats());
    String text = to.toString();
    Require.that(
        text.length() <= TextFields.MOST_CHARACTERS,
        "length of the grade text",
        text.length() + " characters",
        "at most " + TextFields.MOST_CHARACTERS,
        "the curve or the caveats are too long");
    return text;
  }

  /**
   * The grade of a text.
   *
   * @param text what {@link #write} wrote, perhaps changed by hand
   * @return the grade
   * @throws org.flexwright.InvalidInputException if the text is not that of a grade, naming line
   *     and key
   */
  public Grade read(String text) {
    TextFields from = TextFields.of(text);
    int format = from.count("format", 1_000_000);
    String library = from.word("library");
    if (format != FORMAT) {
      throw from.refuse("format", Integer.toString(FORMAT), "it was written by library " + library);
    }
    int data = from.count("data", 1_000_000);
    String name = from.text("name");
    boolean generic = choice(from, "generic");
    GradeBuilder b = new GradeBuilder(name, laws.read(from, "law", 1));
    b.generic = generic;
    b.process = ProcessText.read(from, "process", 1);
    b.factors = EvidenceText.factors(from);
    b.tested = tested(from);
    b.sources = EvidenceText.sources(from);
    b.caveats = EvidenceText.caveats(from);
    double density = from.number("density", "kg/m3");
    double poisson = from.number("poisson", "");
    double strain = from.number("strain-at-break", "");
    from.done();
    if (generic && data != Library.DATA) {
      b.caveats.add(
          Caveat.note(
              "generic grade " + name,
              "written with version "
                  + data
                  + " of the built-in figures, now "
                  + Library.DATA
                  + ": make it again from its hardness",
              Source.derived("stamps of the text")));
    }
    Grade bare = new Grade(b);
    Grade dense = from.at("density", () -> bare.density(Density.kgPerM3(density)));
    Grade ratio = from.at("poisson", () -> dense.poisson(poisson));
    return from.at("strain-at-break", () -> ratio.strainAtBreak(strain));
  }

  private static boolean choice(TextFields from, String key) {
    String word = from.word(key);
    if (!word.equals("yes") && !word.equals("no")) {
      throw from.refuse(key, "yes or no", "");
    }
    return word.equals("yes");
  }

  private static Set<Deformation> tested(TextFields from) {
    Set<Deformation> tested = EnumSet.noneOf(Deformation.class);
    String words = from.word("tested");
    if (words.equals("unknown")) {
      return tested;
    }
    for (String word : words.split(",", -1)) {
      boolean found = false;
      for (Deformation mode : Deformation.values()) {
        found |= EvidenceText.word(mode).equals(word.strip()) && tested.add(mode);
      }
      if (!found) {
        throw from.refuse("tested", "unknown, or uniaxial, equibiaxial, planar, each once", "");
      }
    }
    return tested;
  }
}
