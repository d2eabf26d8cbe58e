// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.Proxy;
import java.net.ProxySelector;
import java.net.SocketAddress;
import java.net.URI;
import java.util.List;

/**
 * The last line behind the page's own policy: whatever still asks for an address outside is sent to
 * a port where nobody listens. To be installed before the first page engine, whose client is made
 * only once.
 */
public final class NoNetwork {
    private static final int NOBODY = 1;

    private NoNetwork() {}

    /** Cuts this program off. */
    public static void install() {
        ProxySelector.setDefault(
                new ProxySelector() {
                    @Override
                    public List<Proxy> select(URI uri) {
                        return List.of(
                                new Proxy(
                                        Proxy.Type.HTTP,
                                        new InetSocketAddress("127.0.0.1", NOBODY)));
                    }

                    @Override
                    public void connectFailed(URI uri, SocketAddress address, IOException failure) {
                        // Failing is what it is for.
                    }
                });
    }
}
