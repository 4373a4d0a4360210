import org.jspecify.annotations.NullMarked;

/** Quantities, evidence, hardness, laws, grades, responses and decisions. */
@NullMarked
module org.flexwright.core {
  requires static org.jspecify;
  requires commons.math3;

  exports org.flexwright.seed;
}
