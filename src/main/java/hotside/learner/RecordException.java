// SPDX-License-Identifier: Apache-2.0
package hotside.learner;

import java.sql.SQLException;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/**
 * The record cannot be opened, read or written, and nothing in it was changed. The message says
 * what failed and what can be done, and is fit to be shown to a person.
 */
public final class RecordException extends RuntimeException {
    private static final long serialVersionUID = 1;

    // Result codes: "Result and Error Codes" of SQLite.
    private static final int BUSY = 5;
    private static final int FULL = 13;

    public RecordException(String message, Throwable cause) {
        super(message, cause);
    }

    /**
     * @param what failed, such as "Your answer could not be stored"
     */
    static RecordException storing(String what, SQLException e) {
        // A record that was deleted has no learner any more for an answer to belong to.
        boolean gone =
                e instanceof SQLiteException s
                        && s.getResultCode() == SQLiteErrorCode.SQLITE_CONSTRAINT_FOREIGNKEY;
        String how = gone ? LearnerWords.of("how.gone") : how(e);
        return new RecordException(what + ": " + how, e);
    }

    private static String how(SQLException e) {
        return switch (e.getErrorCode() & 0xFF) {
            case FULL -> LearnerWords.of("how.full");
            case BUSY -> LearnerWords.of("how.busy");
            default -> LearnerWords.of("how.else", e.getMessage());
        };
    }

    static RecordException reading(SQLException e) {
        return new RecordException(LearnerWords.of("record.reading", e.getMessage()), e);
    }
}
