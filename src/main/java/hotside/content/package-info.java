// SPDX-License-Identifier: Apache-2.0
/**
 * Reading content files: front matter, positions, findings.
 *
 * <p>Start at {@link hotside.content.ContentReader}, which turns a file into a {@link
 * hotside.content.ContentFile}; {@link hotside.content.Fields} walks its front matter and {@link
 * hotside.content.Findings} collects what is wrong, each with its line and column. {@link
 * hotside.content.ContentFolder} reads all files of a folder, on disk or inside the program's jar.
 * Files come from strangers: whatever is in them ends in a finding, never in an exception. This
 * room does not know what a lesson or a problem is. {@link hotside.content.WholeFile} is the way
 * back: whatever the program writes for people is written whole or not at all.
 */
package hotside.content;
