package org.footwell.calculation;

/** A request whose parts have ids for programs, and are called otherwise where people read of them. */
public interface CallsByName {

  /** What a part with this id is called on a sheet; what is no id of one stays as it is. */
  String called(String id);
}
