/**
 * Access control: roles and rights, tokens and sign-on codes with their files, authentication of callers, and limits on
 * wrong codes.
 */
@NullMarked
package stirtide.planner.access;

import org.jspecify.annotations.NullMarked;
