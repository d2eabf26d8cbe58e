// SPDX-License-Identifier: Apache-2.0
package hotside;

/** Where the program starts. */
public final class Hotside {
    private Hotside() {}

    public static void main(String[] args) {
        System.out.println("hotside");
    }
}
