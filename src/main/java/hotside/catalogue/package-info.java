// SPDX-License-Identifier: Apache-2.0
/**
 * All relations in one list: physics and statistics do not know each other, so the room above them
 * joins their lists. Start at {@link hotside.catalogue.Catalogue}.
 */
package hotside.catalogue;
