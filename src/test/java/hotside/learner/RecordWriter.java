// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import java.nio.file.Path;

/** A program that stores attempts until it is killed, and prints each number once it is stored. */
final class RecordWriter {
    private RecordWriter() {}

    public static void main(String[] args) {
        LearnerRecord record = LearnerRecord.open(Path.of(args[0]));
        for (long number = Long.parseLong(args[1]); ; number++) {
            record.add(Samples.attempt(number));
            System.out.println(number);
            System.out.flush();
        }
    }
}
