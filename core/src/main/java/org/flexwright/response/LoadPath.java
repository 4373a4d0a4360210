package org.flexwright.response;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.StringJoiner;
import org.flexwright.InvalidInputException;
import org.flexwright.internal.Require;
import org.flexwright.run.Termination;

/**
 * A path of states from rest to the load asked for: parallel columns of travel, force, pressure,
 * volume and peak strain, and how the path ended. The last state is exactly the one asked for when
 * the path is complete.
 *
 * <p>Immutable and thread-safe. Values are finite.
 */
public final class LoadPath {

  private static final int CHANNELS = Channel.values().length;

  private final double[][] columns;
  private final int size;
  private final Termination termination;

  private LoadPath(double[][] columns, int size, Termination termination) {
    this.columns = columns;
    this.size = size;
    this.termination = termination;
  }

  /** Collects the states of a path in order. Not thread-safe. */
  public static final class Builder {
    private final Set<Channel> channels;
    private final double[][] columns = new double[CHANNELS][];
    private int size;

    private Builder(Set<Channel> channels, int capacity) {
      this.channels = channels;
      for (Channel c : channels) {
        columns[c.ordinal()] = new double[capacity];
      }
    }

    /**
     * Adds one state.
     *
     * @param values one value for each channel, in the order of {@link Channel}
     * @return this builder
     * @throws InvalidInputException if a value is not finite or the count is wrong
     */
    public Builder add(double... values) {
      Require.that(
          values.length == channels.size(),
          "values of a state",
          values.length,
          channels.size() + ", one for each channel",
          "");
      int i = 0;
      for (Channel c : channels) {
        double[] column = columns[c.ordinal()];
        if (size == column.length) {
          column = Arrays.copyOf(column, 2 * size + 1);
          columns[c.ordinal()] = column;
        }
        column[size] = Require.finite(c.toString(), values[i++], c.unit());
      }
      size++;
      return this;
    }

    /**
     * The path of the states added.
     *
     * @param termination how it ended
     * @return the path
     * @throws InvalidInputException if no state was added
     */
    public LoadPath end(Termination termination) {
      Require.atLeast("states of a path", size, 1);
      double[][] cut = new double[CHANNELS][];
      for (Channel c : channels) {
        cut[c.ordinal()] = Arrays.copyOf(columns[c.ordinal()], size);
      }
      return new LoadPath(cut, size, termination);
    }
  }

  /**
   * Starts a path.
   *
   * @param states how many states are expected; more may be added
   * @param first one channel
   * @param others the other channels
   * @return a builder that takes states in the order of {@link Channel}
   */
  public static Builder of(int states, Channel first, Channel... others) {
    return new Builder(EnumSet.of(first, others), Require.atLeast("states", states, 1));
  }

  /**
   * The count of states.
   *
   * @return the count, at least 1
   */
  public int size() {
    return size;
  }

  /**
   * Whether a channel was recorded.
   *
   * @param channel the channel
   * @return true if recorded
   */
  public boolean has(Channel channel) {
    return columns[channel.ordinal()] != null;
  }

  /**
   * One value.
   *
   * @param channel a recorded channel
   * @param state the number of the state, from 0
   * @return the value in SI
   * @throws InvalidInputException if the channel was not recorded or the state does not exist
   */
  public double value(Channel channel, int state) {
    Require.that(
        state >= 0 && state < size, "state", state, "0 to " + (size - 1), "ask size() first");
    return column(channel)[state];
  }

  /**
   * The value at the end of the path.
   *
   * @param channel a recorded channel
   * @return the value in SI
   */
  public double last(Channel channel) {
    return column(channel)[size - 1];
  }

  /**
   * The largest value along the path.
   *
   * @param channel a recorded channel
   * @return the value in SI
   */
  public double peak(Channel channel) {
    return Arrays.stream(column(channel)).max().orElseThrow();
  }

  /**
   * A whole column.
   *
   * @param channel a recorded channel
   * @return a fresh array in SI
   */
  public double[] values(Channel channel) {
    return column(channel).clone();
  }

  private double[] column(Channel channel) {
    double[] column = columns[channel.ordinal()];
    if (column == null) {
      throw new InvalidInputException(
          "channel", channel.toString(), "one of " + channels(), "this path did not record it");
    }
    return column;
  }

  /**
   * The recorded channels, in the order of {@link Channel}.
   *
   * @return the channels
   */
  public List<Channel> channels() {
    return Arrays.stream(Channel.values()).filter(this::has).toList();
  }

  /**
   * How the path ended.
   *
   * @return the ending
   */
  public Termination termination() {
    return termination;
  }

  /** One readable line: the count of states and the last one. */
  @Override
  public String toString() {
    StringJoiner line = new StringJoiner(", ", size + " states to ", "");
    for (Channel c : channels()) {
      line.add(c + " " + c.show(last(c)));
    }
    return termination.complete() ? line.toString() : line + " (" + termination + ")";
  }
}
