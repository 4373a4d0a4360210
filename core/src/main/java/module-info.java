import org.jspecify.annotations.NullMarked;

/** Quantities, evidence, hardness, laws, grades, responses and decisions. */
@NullMarked
module org.flexwright.core {
  requires static org.jspecify;
  requires commons.math3;

  exports org.flexwright;
  exports org.flexwright.evidence;
  exports org.flexwright.hardness;
  exports org.flexwright.hardness.relation;
  exports org.flexwright.quantity;
  exports org.flexwright.run;
  exports org.flexwright.seed;
}
