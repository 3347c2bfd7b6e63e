// The catalogues: complete, up to date with the sources, and with every placeholder of the source.
#include <QHash>
#include <QProcess>
#include <QRegularExpression>
#include <QSet>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>
#include <QXmlStreamReader>

namespace {

struct Message {
    QString context;
    QString source;
    QString comment;
    bool numerus = false;
    bool unfinished = false;
    QStringList translations;

    QString key() const { return context + '|' + comment + '|' + source; }
};

Message readMessage(QXmlStreamReader& xml, const QString& context) {
    Message m{context, {}, {}, xml.attributes().value("numerus") == QLatin1String("yes"), false, {}};
    while (xml.readNextStartElement()) {
        if (xml.name() == QLatin1String("source")) {
            m.source = xml.readElementText();
        } else if (xml.name() == QLatin1String("comment")) {
            m.comment = xml.readElementText();
        } else if (xml.name() == QLatin1String("translation")) {
            m.unfinished = xml.attributes().hasAttribute("type");
            if (m.numerus) {
                while (xml.readNextStartElement())
                    m.translations << xml.readElementText();
            } else {
                m.translations << xml.readElementText();
            }
        } else {
            xml.skipCurrentElement();
        }
    }
    return m;
}

QList<Message> catalogue(const QString& path) {
    QFile file(path);
    QList<Message> messages;
    if (!file.open(QIODevice::ReadOnly)) return messages;
    QXmlStreamReader xml(&file);
    QString context;
    while (!xml.atEnd()) {
        if (!xml.readNext() || !xml.isStartElement()) continue;
        if (xml.name() == QLatin1String("name")) context = xml.readElementText();
        if (xml.name() == QLatin1String("message")) messages << readMessage(xml, context);
    }
    return messages;
}

QStringList placeholders(const QString& text) {
    static const QRegularExpression mark("%(L?\\d+|L?n)");
    QSet<QString> marks;
    for (auto it = mark.globalMatch(text); it.hasNext();)
        marks << it.next().captured().remove('L');
    QStringList sorted(marks.begin(), marks.end());
    sorted.sort();
    return sorted;
}

QString sourceFolder() { return qEnvironmentVariable("LANEWARD_SOURCE"); }

}  // namespace

class TestTranslations : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void areComplete_data();
    void areComplete();
    void germanIsNotEnglish();
    void matchTheSources_data();
    void matchTheSources();
};

void TestTranslations::areComplete_data() {
    QTest::addColumn<QString>("language");
    QTest::newRow("German") << "de";
    QTest::newRow("English plurals") << "en";
}

void TestTranslations::areComplete() {
    QFETCH(QString, language);
    const QList<Message> messages = catalogue(sourceFolder() + "/translations/laneward_" + language + ".ts");
    QVERIFY2(messages.size() > (language == "de" ? 300 : 5), "the catalogue is missing or nearly empty");
    for (const Message& m : messages) {
        QVERIFY2(!m.unfinished, qPrintable("unfinished: " + m.key()));
        QCOMPARE(m.translations.size(), m.numerus ? 2 : 1);
        for (const QString& t : m.translations) {
            QVERIFY2(!t.trimmed().isEmpty(), qPrintable("empty: " + m.key()));
            QStringList expected = placeholders(m.source);
            if (m.numerus && !placeholders(t).contains("%n")) expected.removeAll("%n");  // 'one lane' may be a word
            QVERIFY2(placeholders(t) == expected, qPrintable("placeholders differ: " + m.key() + " -> " + t));
        }
    }
}

/// Plural forms of one catalogue that got into the other; a unit of a letter or two is the same in both.
void TestTranslations::germanIsNotEnglish() {
    QHash<QString, QStringList> english;
    for (const Message& m : catalogue(sourceFolder() + "/translations/laneward_en.ts"))
        english.insert(m.key(), m.translations);
    static const QRegularExpression word("[a-z]{3,}");
    QStringList same;
    for (const Message& m : catalogue(sourceFolder() + "/translations/laneward_de.ts"))
        if (m.numerus && english.value(m.key()) == m.translations && m.translations.front().contains(word)) same << m.key();
    QVERIFY2(same.isEmpty(), qPrintable("English in the German catalogue: " + same.join('\n')));
}

void TestTranslations::matchTheSources_data() { areComplete_data(); }

void TestTranslations::matchTheSources() {
    QFETCH(QString, language);
    const QString lupdate = QStandardPaths::findExecutable("lupdate", {"/usr/lib/qt6/bin"});
    QVERIFY2(!lupdate.isEmpty(), "lupdate is missing");
    QTemporaryDir dir;
    const QString fresh = dir.filePath("fresh_" + language + ".ts");
    QStringList arguments{"-silent", "-locations", "none", "-I", "."};
    if (language == "en") arguments << "-pluralonly";
    arguments << "app"
              << "core/documents"
              << "-ts" << fresh;
    QProcess process;
    process.setWorkingDirectory(sourceFolder());
    process.start(lupdate, arguments);
    QVERIFY(process.waitForFinished(120'000));
    QSet<QString> inSources;
    for (const Message& m : catalogue(fresh))
        inSources << m.key();
    QSet<QString> translated;
    for (const Message& m : catalogue(sourceFolder() + "/translations/laneward_" + language + ".ts"))
        translated << m.key();
    const QSet<QString> missing = inSources - translated;
    const QSet<QString> stale = translated - inSources;
    QVERIFY2(missing.isEmpty(), qPrintable("not in the catalogue: " + QStringList(missing.begin(), missing.end()).join('\n')));
    QVERIFY2(stale.isEmpty(), qPrintable("no longer said: " + QStringList(stale.begin(), stale.end()).join('\n')));
}

QTEST_GUILESS_MAIN(TestTranslations)
#include "tst_translations.moc"
