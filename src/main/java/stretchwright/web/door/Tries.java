package stretchwright.web.door;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.LongSupplier;

/**
 * How often a pass phrase may be tried: a few times at once from one address, then one a while; and so of all addresses together,
 * so that thousands of them find no phrase and take no more than a part of one core.
 */
final class Tries {
    /** At once from one address. */
    static final int BURST = 5;

    /** At once from all. */
    static final int ALL_BURST = 20;

    static final long MILLIS_EACH = 12_000;
    static final long ALL_MILLIS_EACH = 3_000;

    /** Addresses that are remembered, those that tried last; to be forgotten sooner takes more tries than all have together. */
    static final int MOST = 1000;

    private static final int NETWORK_BYTES = 8;

    private final LongSupplier millis;
    private final Bucket all;
    private final Map<String, Bucket> from = new LinkedHashMap<>(16, 0.75f, true);

    /** @param millis of a clock */
    Tries(LongSupplier millis) {
        this.millis = millis;
        this.all = new Bucket(ALL_BURST, ALL_MILLIS_EACH, millis.getAsLong());
    }

    /** Fills up by one a while. */
    private static final class Bucket {
        private final int burst;
        private final long each;
        private double left;
        private long at;

        Bucket(int burst, long each, long now) {
            this.burst = burst;
            this.each = each;
            this.left = burst;
            this.at = now;
        }

        /** Until one may be taken. */
        long pause(long now) {
            left = Math.min(burst, left + Math.max(0, now - at) / (double) each);
            at = now;
            return left >= 1 ? 0 : (long) Math.ceil((1 - left) * each);
        }
    }

    /** Takes one: 0; or how many milliseconds there are to wait until there is one. */
    synchronized long take(String address) {
        long now = millis.getAsLong();
        Bucket own = from.computeIfAbsent(network(address), a -> new Bucket(BURST, MILLIS_EACH, now));
        from.keySet().stream().limit(Math.max(0, from.size() - MOST)).toList().forEach(from::remove);
        long wait = Math.max(own.pause(now), all.pause(now));
        if (wait == 0) {
            own.left--;
            all.left--;
        }
        return wait;
    }

    /** It was the right phrase, and counts for nothing. */
    synchronized void giveBack(String address) {
        Bucket own = from.get(network(address));
        if (own != null) {
            own.left++;
        }
        all.left++;
    }

    synchronized int remembered() {
        return from.size();
    }

    /** Whoever has one address of version 6 has 2^64 of them. */
    private static String network(String address) {
        try {
            byte[] bytes = InetAddress.getByName(address).getAddress();
            return HexFormat.of().formatHex(Arrays.copyOf(bytes, Math.min(bytes.length, NETWORK_BYTES)));
        } catch (UnknownHostException e) {
            return address;
        }
    }
}
