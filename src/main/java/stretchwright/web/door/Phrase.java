package stretchwright.web.door;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.text.Normalizer;
import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.PBEKeySpec;

/** A pass phrase of which only a salted hash is kept. Made slow on purpose: a fifth of a second or so for each try. */
public final class Phrase {
    /** In characters. */
    public static final int SHORTEST = 12;

    /** In characters; what is longer is not even looked at. */
    public static final int LONGEST = 200;

    private static final String KIND = "PBKDF2WithHmacSHA256";

    /**
     * For this kind as OWASP's Password Storage Cheat Sheet has it:
     * https://cheatsheetseries.owasp.org/cheatsheets/Password_Storage_Cheat_Sheet.html#pbkdf2
     */
    private static final int ROUNDS = 600_000;

    private static final int BITS = 256;
    private static final int SALT_BYTES = 16;

    private final byte[] salt;
    private final byte[] hash;

    private Phrase(byte[] salt, byte[] hash) {
        this.salt = salt;
        this.hash = hash;
    }

    public static Phrase of(String words) {
        byte[] salt = new byte[SALT_BYTES];
        new SecureRandom().nextBytes(salt);
        return new Phrase(salt, hash(words, salt));
    }

    /** Whether it is this one, whatever white space a phone put around and between the words; as slow for a near miss as for any. */
    boolean is(String words) {
        return words.length() <= LONGEST && MessageDigest.isEqual(hash, hash(words, salt));
    }

    /** How it is compared, and counted. */
    public static String plain(String words) {
        return Normalizer.normalize(words, Normalizer.Form.NFKC).strip().replaceAll("\\s+", " ");
    }

    private static byte[] hash(String words, byte[] salt) {
        char[] typed = plain(words).toCharArray();
        PBEKeySpec spec = new PBEKeySpec(typed, salt, ROUNDS, BITS);
        try {
            return SecretKeyFactory.getInstance(KIND).generateSecret(spec).getEncoded();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java has " + KIND, e);
        } finally {
            spec.clearPassword();
        }
    }

    /** Whether two short secrets are the same, in a time that tells nothing of where they differ. */
    static boolean same(String one, String other) {
        return MessageDigest.isEqual(one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
    }
}
