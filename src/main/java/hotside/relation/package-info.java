// SPDX-License-Identifier: Apache-2.0
/**
 * What a relation is: named slots with units and ranges, a pure function, its worked steps, its
 * cautions, its source.
 *
 * <p>Start at {@link hotside.relation.Relation}. A {@link hotside.relation.Slot} is a named input
 * or output, {@link hotside.relation.Values} carry numbers by slot name, {@link
 * hotside.relation.Working} is what the function writes its steps and results to, {@link
 * hotside.relation.Solver} turns a relation round, and a {@link hotside.relation.Chain} feeds one
 * relation's output to the next. This room knows no physics, no screen and no file.
 */
package hotside.relation;
