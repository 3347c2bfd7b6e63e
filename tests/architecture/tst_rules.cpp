// The architecture's rules, held against every source file, and each rule held against a planted fault.
#include "tests/architecture/rules.h"

#include <QDirIterator>
#include <QTest>

#include <functional>

using Check = std::function<QStringList(const QString& path, const QString& text)>;

class TestRules : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void includesPointDown();
    void coreKnowsNoScreen();
    void nothingForbidden();
    void filesAreShort();
    void functionsAreShort();
    void namesAreLowerCase();
    void topLevelIsAsAgreed();
    void plantedFaultsAreFound();

private:
    void holds(const Check& check);

    QString m_source;
    QHash<QString, QString> m_files;  ///< path from the top to text
};

void TestRules::initTestCase() {
    m_source = qEnvironmentVariable("LANEWARD_SOURCE");
    QVERIFY2(!m_source.isEmpty(), "LANEWARD_SOURCE must name the source folder");
    for (const QString& top : QStringList{"core", "app", "tests"}) {
        QDirIterator it(m_source + '/' + top, {"*.cpp", "*.h"}, QDir::Files, QDirIterator::Subdirectories);
        while (it.hasNext()) {
            QFile file(it.next());
            QVERIFY(file.open(QIODevice::ReadOnly));
            m_files.insert(QDir(m_source).relativeFilePath(file.fileName()), QString::fromUtf8(file.readAll()));
        }
    }
    QVERIFY2(m_files.size() > 30, "the sources were not found");
}

void TestRules::holds(const Check& check) {
    QStringList broken;
    for (auto it = m_files.cbegin(); it != m_files.cend(); ++it) {
        if (!it.key().startsWith("tests/architecture/")) broken += check(it.key(), it.value());
    }
    broken.sort();
    QVERIFY2(broken.isEmpty(), qPrintable('\n' + broken.join('\n')));
}

void TestRules::includesPointDown() { holds(rules::wrongIncludes); }
void TestRules::coreKnowsNoScreen() { holds(rules::wrongQtIncludes); }
void TestRules::nothingForbidden() { holds(rules::forbiddenLines); }

void TestRules::filesAreShort() {
    holds([](const QString& path, const QString& text) {
        return path.startsWith("tests/") ? QStringList{} : rules::tooLong(path, text);
    });
}

void TestRules::functionsAreShort() {
    holds([](const QString& path, const QString& text) {
        return path.startsWith("tests/") ? QStringList{} : rules::longFunctions(path, text);
    });
}

void TestRules::namesAreLowerCase() {
    for (auto it = m_files.cbegin(); it != m_files.cend(); ++it)
        QCOMPARE(it.key(), it.key().toLower());
}

void TestRules::topLevelIsAsAgreed() {
    const QStringList agreed{"CMakeLists.txt", "README.md", "DEVELOPERS.md", "LICENSE", "app",
                             "core",           "resources", "translations",  "tests"};
    for (const QString& name : QDir(m_source).entryList(QDir::AllEntries | QDir::NoDotAndDotDot)) {
        QVERIFY2(agreed.contains(name) || name.startsWith("build"), qPrintable(name));
    }
    for (const QString& name : agreed)
        QVERIFY2(QFileInfo::exists(m_source + '/' + name), qPrintable(name));
}

void TestRules::plantedFaultsAreFound() {
    QCOMPARE(rules::wrongIncludes("core/calendar/x.cpp", "#include \"core/planning/plan.h\"\n").size(), 1);
    QCOMPARE(rules::wrongIncludes("core/planning/x.cpp", "#include \"core/calendar/series.h\"\n").size(), 0);
    QCOMPARE(rules::wrongIncludes("core/season/x.h", "#include \"app/edits/session.h\"\n").size(), 1);
    QCOMPARE(rules::wrongIncludes("core/season/x.h", "#include \"core/storage/store.h\"\n").size(), 1);
    QCOMPARE(rules::wrongIncludes("app/pages/today/x.cpp", "#include \"app/pages/lanes/y.h\"\n").size(), 1);
    QCOMPARE(rules::wrongQtIncludes("core/documents/x.cpp", "#include <QPainter>\n").size(), 1);
    QCOMPARE(rules::wrongQtIncludes("app/edits/x.cpp", "#include <QSqlQuery>\n").size(), 1);
    QCOMPARE(rules::wrongQtIncludes("app/edits/x.cpp", "#include <QtWidgets>\n").size(), 1);
    QCOMPARE(rules::forbiddenLines("core/storage/x.cpp", "    db.transaction();\n").size(), 1);
    QCOMPARE(rules::forbiddenLines("core/storage/x.cpp", "    query.exec(\"DELETE FROM \" + name);\n").size(), 1);
    QCOMPARE(rules::forbiddenLines("core/storage/x.cpp", "    query.prepare(QString(\"SELECT %1\").arg(name));\n").size(), 1);
    QCOMPARE(rules::forbiddenLines("app/pages/today/x.cpp", "    QMessageBox::question(this, a, b);\n").size(), 1);
    QCOMPARE(rules::forbiddenLines("app/pages/today/x.cpp", "    painter.setPen(QColor(255, 0, 0));\n").size(), 1);
    QCOMPARE(rules::forbiddenLines("core/planning/x.cpp", "    auto t = QDateTime::currentDateTime();\n").size(), 1);
    QCOMPARE(rules::tooLong("core/base/x.h", QString(201, '\n')).size(), 1);
    QCOMPARE(rules::tooLong("core/base/x.cpp", QString(400, '\n')).size(), 0);
    QCOMPARE(rules::longFunctions("core/base/x.cpp", "void f() {\n" + QString(61, '\n') + "}\n").size(), 1);
    QCOMPARE(rules::longFunctions("core/base/x.cpp", "void f() {\n" + QString(50, '\n') + "}\n").size(), 0);
}

QTEST_GUILESS_MAIN(TestRules)
#include "tst_rules.moc"
