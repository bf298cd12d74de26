package wireworthy.vehicle.sheet;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/**
 * The letters of a file whose encoding nobody told: by its byte order mark, by the zero bytes of
 * UTF-16, else UTF-8 where it is that, else the letters of western Windows.
 *
 * @param encoding for people
 */
record Letters(String encoding, String text) {
    private static final Charset WINDOWS = Charset.forName("windows-1252");
    private static final int LOOKED_AT = 4096;

    static Letters of(final byte[] bytes) {
        if (begins(bytes, 0xFF, 0xFE)) {
            return new Letters("UTF-16", text(bytes, 2, StandardCharsets.UTF_16LE));
        }
        if (begins(bytes, 0xFE, 0xFF)) {
            return new Letters("UTF-16", text(bytes, 2, StandardCharsets.UTF_16BE));
        }
        if (begins(bytes, 0xEF, 0xBB, 0xBF)) {
            return new Letters("UTF-8", text(bytes, 3, StandardCharsets.UTF_8));
        }
        final int zeroAt = firstZero(bytes);
        if (zeroAt >= 0) {
            final boolean little = zeroAt % 2 == 1;
            return new Letters(
                    "UTF-16",
                    text(bytes, 0, little ? StandardCharsets.UTF_16LE : StandardCharsets.UTF_16BE));
        }
        return unmarked(bytes);
    }

    private static boolean begins(final byte[] bytes, final int... mark) {
        for (int i = 0; i < mark.length; i++) {
            if (i >= bytes.length || (bytes[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }

    private static int firstZero(final byte[] bytes) {
        for (int i = 0; i < Math.min(bytes.length, LOOKED_AT); i++) {
            if (bytes[i] == 0) {
                return i;
            }
        }
        return -1;
    }

    private static String text(final byte[] bytes, final int from, final Charset charset) {
        return new String(bytes, from, bytes.length - from, charset);
    }

    private static Letters unmarked(final byte[] bytes) {
        try {
            final String text =
                    StandardCharsets.UTF_8
                            .newDecoder()
                            .onMalformedInput(CodingErrorAction.REPORT)
                            .decode(ByteBuffer.wrap(bytes))
                            .toString();
            return new Letters("UTF-8", text);
        } catch (final CharacterCodingException e) {
            return new Letters("Windows, western", text(bytes, 0, WINDOWS));
        }
    }
}
