package leafturn.records.people;

import java.util.Set;

/**
 * Who asks, and what they may.
 *
 * @param person who it is
 * @param open true when the site serves this machine alone and nobody has a password yet
 * @param shared ids of the properties shared with a helper or reader; empty for the other roles
 */
public record Visitor(Person person, boolean open, Set<String> shared) {
  public Visitor {
    shared = Set.copyOf(shared);
  }

  /** Whether they see a property and all that belongs to it. */
  public boolean mayRead(String property) {
    return mayReadAll() || shared.contains(property);
  }

  /** Whether they see every property. */
  public boolean mayReadAll() {
    return !person.role().needsShares();
  }

  /** Whether they may write into the log of a property's lawns. */
  public boolean mayLog(String property) {
    return mayLogSomewhere() && mayRead(property);
  }

  /** Whether they may write into the log of any lawn they see. */
  public boolean mayLogSomewhere() {
    return person.role() != Role.READER;
  }

  /** Whether they may change a property and what belongs to it. */
  public boolean mayChange(String property) {
    return mayChangeAll() && mayRead(property);
  }

  /** Whether they may add and change properties. */
  public boolean mayChangeAll() {
    return person.role() == Role.OWNER || person.role() == Role.ADVISER;
  }

  /** Whether they may change thresholds and other numbers of the rules. */
  public boolean mayChangeRules() {
    return mayChangeAll();
  }

  /** Whether they may invite people and change what those may do. */
  public boolean mayManagePeople() {
    return person.role() == Role.OWNER;
  }

  /** Whether they may take the whole book away or put another in its place. */
  public boolean mayManageBook() {
    return person.role() == Role.OWNER;
  }
}
