#include "tests/support/hostile_texts.h"

namespace support {
namespace {

const QStringList sql{"'",
                      "''",
                      "\"",
                      "`",
                      ";",
                      "--",
                      "/*",
                      "*/",
                      "\\",
                      "\\'",
                      "';--",
                      "'; DROP TABLE series; --",
                      "\"; DROP TABLE series; --",
                      "1; DELETE FROM people",
                      "') ; DELETE FROM operations; --",
                      "' OR '1'='1",
                      "' OR 1=1 --",
                      "\" OR \"\"=\"",
                      "' UNION SELECT 1 --",
                      "x' AND 1=(SELECT COUNT(*) FROM people) --",
                      "'; UPDATE people SET role='manager'; --",
                      "'; INSERT INTO people VALUES ('a'); --",
                      "'; ATTACH DATABASE '/tmp/x' AS x; --",
                      "'; PRAGMA writable_schema=ON; --",
                      "'; COPY people TO '/tmp/x'; --",
                      "'; SELECT pg_sleep(5); --",
                      "$$; DROP TABLE series; $$",
                      "$1",
                      "?",
                      ":name",
                      "@p",
                      "%s",
                      "%1 %2 %99",
                      "{0}",
                      "E'\\x27'",
                      "\\047; DROP TABLE series",
                      "U&'\\0027'",
                      "' || (SELECT 1) || '",
                      "'); VACUUM; --",
                      "COMMIT; --",
                      "ROLLBACK",
                      "NULL",
                      "null",
                      "DEFAULT",
                      "TRUE",
                      "0x27",
                      "'\n; DROP TABLE series; --",
                      "\u02bc; DROP TABLE series",
                      "\uff07 OR 1=1"};

}  // namespace

QStringList hostileTexts() {
    QStringList all = sql;
    all << "<b>bold</b>"
        << "<img src='file:///etc/passwd'>"
        << "&lt;&amp;"
        << "\u202egnp.exe"
        << "a\u2066b\u2069c\u200f"
        << "\u05d0\u05d1\u05d2 \u0627\u0644\u0639"
        << QString::fromUtf8("\xf0\x9f\x8e\xb3\xf0\x9f\x91\xa9\xe2\x80\x8d\xf0\x9f\x94\xa7") << "e\u0301\u0302\u0303"
        << "line\nbreak\r\nand\ttab"
        << "\x01\x07\x1b[31m"
        << "../../etc/passwd"
        << "CON"
        << "a/b\\c:d"
        << "=1+1"
        << "-5"
        << "+5"
        << "@SUM(A1)"
        << " leading and trailing " << QString(10'000, QChar(0x00e4)) << "\ufeffmark"
        << "{\"json\": [1, 2, \"\\u0000\"]}"
        << "\u00df\u0130\u0131\u017f"
        << "\u2028\u2029" << QString(QChar(0xfffd));
    return all;
}

}  // namespace support
