package org.flexwright.testing;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.DoubleSupplier;
import java.util.function.Supplier;

/**
 * What one call costs once it is compiled.
 *
 * <p>Bytes are a sure figure (the least of many batches), fit for a gate. Nanoseconds (the median
 * of the last batches) depend on the machine and its load: gate them by wide factors or ratios
 * only.
 *
 * @param bytes bytes allocated a call
 * @param nanos nanoseconds a call
 */
public record Effort(double bytes, double nanos) {
  private static final com.sun.management.ThreadMXBean THREADS =
      (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
  private static final int BATCHES = 15;
  private static final long WARM_UP_NANOS = 300_000_000;
  private static final long BATCH_NANOS = 2_000_000;
  private static final long SETTLE_NANOS = 700_000_000;
  private static final long PATIENCE_NANOS = 20_000_000_000L;
  private static final double LEAST_FALL = 0.05;
  private static final long MOST_NANOS = 3_000_000_000L;
  private static volatile double numberSink;
  private static volatile Object objectSink = "";

  /** Measures a call that gives a number. */
  public static Effort ofNumber(DoubleSupplier call) {
    return of(numbers(call), LEAST_FALL, SETTLE_NANOS);
  }

  /** Measures a call that gives an object, which counts as allocated. */
  public static Effort ofObject(Supplier<?> call) {
    return of(objects(call), LEAST_FALL, SETTLE_NANOS);
  }

  /**
   * Asserts that a call that gives a number allocates at most so many bytes. It ends as soon as
   * that is seen, and waits long for the compilers of a loaded machine otherwise.
   */
  public static Effort numberWithin(double mostBytes, DoubleSupplier call) {
    return within(mostBytes, numbers(call));
  }

  /** Asserts the same of a call that gives an object, which counts as allocated. */
  public static Effort objectWithin(double mostBytes, Supplier<?> call) {
    return within(mostBytes, objects(call));
  }

  private static Effort within(double mostBytes, Batch batch) {
    double enough = mostBytes + LEAST_FALL;
    Effort effort = of(batch, enough, PATIENCE_NANOS);
    if (!(effort.bytes() <= enough)) {
      throw new AssertionError(effort + ", must be at most " + mostBytes + " B/call");
    }
    return effort;
  }

  private static Batch numbers(DoubleSupplier call) {
    return n -> {
      double sum = 0;
      for (int i = 0; i < n; i++) {
        sum += call.getAsDouble();
      }
      numberSink = sum;
    };
  }

  private static Batch objects(Supplier<?> call) {
    return n -> {
      for (int i = 0; i < n; i++) {
        objectSink = call.get();
      }
    };
  }

  private interface Batch {
    void run(int calls);
  }

  private static Effort of(Batch batch, double enough, long patience) {
    int calls = 1;
    long start = System.nanoTime();
    while (true) {
      long from = System.nanoTime();
      batch.run(calls);
      long now = System.nanoTime();
      if (now - start > WARM_UP_NANOS) {
        break;
      }
      double factor = Math.min(2, BATCH_NANOS / (double) Math.max(1, now - from));
      calls = (int) Math.min(Math.max(1, Math.ceil(calls * factor)), 1 << 24);
    }
    return settled(batch, calls, enough, patience);
  }

  /** Measures until the bytes have not fallen for a while, as compilers take their time. */
  private static Effort settled(Batch batch, int calls, double enough, long patience) {
    double[] nanos = new double[BATCHES];
    double bytes = Double.POSITIVE_INFINITY;
    long first = System.nanoTime();
    long fell = first;
    int done = 0;
    while (true) {
      long bytesBefore = THREADS.getCurrentThreadAllocatedBytes();
      long from = System.nanoTime();
      batch.run(calls);
      long now = System.nanoTime();
      nanos[done++ % BATCHES] = (now - from) / (double) calls;
      double some = (THREADS.getCurrentThreadAllocatedBytes() - bytesBefore) / (double) calls;
      if (some < bytes - LEAST_FALL) {
        fell = now;
      }
      bytes = Math.min(bytes, some);
      boolean settled = bytes <= enough || now - fell > patience;
      boolean late = now - first > Math.max(MOST_NANOS, patience);
      boolean measured = done >= BATCHES || (done >= 3 && now - first > MOST_NANOS);
      if (measured && (settled || late)) {
        break;
      }
    }
    int kept = Math.min(done, BATCHES);
    Arrays.sort(nanos, 0, kept);
    return new Effort(bytes, nanos[kept / 2]);
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%.1f B/call, %.1f ns/call", bytes, nanos);
  }
}
