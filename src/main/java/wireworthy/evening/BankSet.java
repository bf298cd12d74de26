package wireworthy.evening;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wireworthy.practice.Bank;
import wireworthy.practice.Banks;
import wireworthy.practice.Template;

/**
 * The templates a sheet is made from, in an order that holds on every machine.
 *
 * @param digest of ids, versions, skills and difficulties, {@value #DIGEST_BITS} bits: with another
 *     one the same choice would give other problems or numbers
 */
record BankSet(List<Template> templates, int digest) {
    static final int DIGEST_BITS = 20;

    static BankSet of(final Banks banks) {
        final List<Template> templates =
                banks.banks().stream()
                        .sorted(Comparator.comparing(Bank::id))
                        .flatMap(bank -> bank.templates().stream())
                        .toList();
        return new BankSet(templates, digest(templates));
    }

    private static int digest(final List<Template> templates) {
        final StringBuilder text = new StringBuilder();
        for (final Template each : templates) {
            text.append(each.fullId()).append(' ').append(each.version()).append(' ');
            text.append(each.skill().id()).append(' ').append(each.difficulty()).append('\n');
        }
        final byte[] sha = sha256(text.toString());
        return (sha[0] & 0xff) << 12 | (sha[1] & 0xff) << 4 | (sha[2] & 0xff) >> 4;
    }

    private static byte[] sha256(final String text) {
        try {
            return MessageDigest.getInstance("SHA-256")
                    .digest(text.getBytes(StandardCharsets.UTF_8));
        } catch (final NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    Optional<Template> template(final String fullId) {
        return templates.stream().filter(each -> each.fullId().equals(fullId)).findFirst();
    }
}
