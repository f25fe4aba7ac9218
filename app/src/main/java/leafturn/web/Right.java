package leafturn.web;

import java.util.function.Predicate;
import leafturn.records.people.Visitor;

/**
 * What a route asks of its visitor. A route about one property asks besides, in its handler, for
 * that property: {@code visitor.mayRead(property)}, and answers 404 where that says no.
 */
enum Right {
  /** Nothing, and nobody is asked who they are: files of the site, addresses that are secrets. */
  OPEN(visitor -> true),

  /** Nothing: pages for those who have not signed in yet. */
  ANYBODY(visitor -> true),

  /** To be somebody the book knows. */
  READ(visitor -> true),

  /** To write into logs. */
  LOG(Visitor::mayLogSomewhere),

  /** To add and change properties, lawns and what belongs to them. */
  CHANGE(Visitor::mayChangeAll),

  /** To change the numbers of the rules. */
  CHANGE_RULES(Visitor::mayChangeRules),

  /** To invite people and change what those may do. */
  MANAGE_PEOPLE(Visitor::mayManagePeople),

  /** To take the whole book away or put another in its place. */
  MANAGE_BOOK(Visitor::mayManageBook);

  private final Predicate<Visitor> test;

  Right(Predicate<Visitor> test) {
    this.test = test;
  }

  /** Whether strangers have it. */
  boolean isForStrangers() {
    return this == OPEN || this == ANYBODY;
  }

  /** Whether somebody the book knows has it. */
  boolean has(Visitor visitor) {
    return test.test(visitor);
  }
}
