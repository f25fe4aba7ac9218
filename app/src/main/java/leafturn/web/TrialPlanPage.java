package leafturn.web;

import leafturn.web.form.Form;

/**
 * The form of a trial's plan.
 *
 * @param headline what is done here
 * @param form the form
 * @param action where it is sent
 * @param version of the trial's sheet; empty for a new one
 * @param leaveTo where the way out leads
 * @param frozen whether the plan is frozen, so that a change asks for a reason
 * @param why the reason as it was typed
 * @param conflict what somebody else did meanwhile; empty as a rule
 */
public record TrialPlanPage(
    String headline,
    Form form,
    String action,
    String version,
    String leaveTo,
    boolean frozen,
    String why,
    String conflict) {}
