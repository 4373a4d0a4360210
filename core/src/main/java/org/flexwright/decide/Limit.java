package org.flexwright.decide;

import org.flexwright.response.Channel;

/** One bound on the load of a response. */
record Limit(String name, Channel channel, boolean upper, double value) {

  /** This bound in words, such as "force at most 8 N". */
  String words() {
    return name + (upper ? " at most " : " at least ") + channel.show(value);
  }
}
