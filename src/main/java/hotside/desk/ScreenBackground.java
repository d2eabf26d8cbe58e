// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;

/** Works on the common pool and answers on the screen's thread. */
final class ScreenBackground implements Background {
    @Override
    public <T> void run(Supplier<T> work, Consumer<T> then) {
        CompletableFuture.supplyAsync(work)
                .whenComplete(
                        (result, fault) ->
                                Platform.runLater(
                                        () -> {
                                            if (fault != null) {
                                                throw new IllegalStateException(fault);
                                            }
                                            then.accept(result);
                                        }));
    }
}
