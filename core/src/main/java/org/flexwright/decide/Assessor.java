package org.flexwright.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.flexwright.InvalidInputException;
import org.flexwright.evidence.Factors;
import org.flexwright.grade.Feature;
import org.flexwright.grade.Grade;
import org.flexwright.quantity.Length;
import org.flexwright.response.Part;
import org.flexwright.response.Response;
import org.flexwright.response.ScaledValue;

/** Asks a part at one size all that a question demands. Counts its work. */
final class Assessor<P extends Part<P>> {

  private final Question<P> question;
  private final Grade grade;
  private int responses;
  private int hardest; // the case of service that failed last

  Assessor(Question<P> question, Grade grade) {
    this.question = question;
    this.grade = grade;
  }

  int responses() {
    return responses;
  }

  Assessment<P> at(Length size) {
    P part;
    List<CaseResult> cases = new ArrayList<>();
    Feature thinnest;
    Factors factors;
    try {
      part = question.lever().set(question.part(), size);
      thinnest = part.thinnest();
      factors = grade.factors(thinnest.size());
      cases.add(ask(part, factors));
      for (P extreme : part.serviceExtremes()) {
        cases.add(ask(extreme, factors));
      }
    } catch (InvalidInputException e) {
      // a size at which the geometry cannot exist is a failing size, not a broken question
      return Assessment.impossible(size, e.sentence());
    }
    double smallest = grade.process().smallest(thinnest.kind()).m();
    return new Assessment<>(
        size,
        Optional.of(part),
        grade.process().refuses(thinnest),
        Math.log(thinnest.size().m() / smallest) + 1e-9,
        factors,
        factors.choleskyOfCorrelation(),
        List.copyOf(cases));
  }

  /** Whether a size is sure, found with as little work as may be. */
  boolean sure(Length size) {
    try {
      P part = question.lever().set(question.part(), size);
      Feature thinnest = part.thinnest();
      if (grade.process().refuses(thinnest).isPresent()) {
        return false;
      }
      Factors factors = grade.factors(thinnest.size());
      double[][] cholesky = factors.choleskyOfCorrelation();
      List<P> cases = new ArrayList<>(part.serviceExtremes());
      cases.add(0, part);
      // neighbours fail for the same reason: ask first what failed last
      int first = Math.min(hardest, cases.size() - 1);
      for (int i = 0; i < cases.size(); i++) {
        int which = (first + i) % cases.size();
        if (ask(cases.get(which), factors).sureMargin(cholesky) < 0.0) {
          hardest = which;
          return false;
        }
      }
      return true;
    } catch (InvalidInputException e) {
      return false; // a geometry that cannot exist
    }
  }

  private CaseResult ask(P part, Factors factors) {
    List<Response> answers = new ArrayList<>();
    List<Criterion> criteria = new ArrayList<>();
    for (Target target : question.targets()) {
      Response r = part.respond(grade, target.load());
      responses++;
      answers.add(r);
      ScaledValue load = known(Limits.judged(target, r));
      if (!r.termination().complete()) {
        criteria.add(Criterion.ended(r.termination().why()));
      }
      for (Limit limit : Limits.of(target)) {
        criteria.add(Criterion.load(limit, load, factors));
      }
      Survival demand = question.survival();
      double allowed = grade.strainAtBreak(r.strainCrossesLayers()) / demand.safety();
      criteria.add(Criterion.strain(allowed, r.strain(), factors));
      if (demand.cycles() > 1.0) {
        criteria.add(Criterion.life(demand, r.strain(), factors));
      }
    }
    return new CaseResult(List.copyOf(answers), List.copyOf(criteria));
  }

  private ScaledValue known(ScaledValue load) {
    double share = question.modelShare();
    return share == 1.0
        ? load
        : load.model(Math.pow(load.modelLow(), share), Math.pow(load.modelHigh(), share));
  }
}
