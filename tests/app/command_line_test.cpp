// The program as it is called from a shell.
#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QMap>
#include <QProcess>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace {

struct Called {
    int code = -1;
    QString out;
    QString errors;
};

class CommandLine : public testing::Test {
  protected:
    void SetUp() override { ASSERT_TRUE(folder.isValid()); }

    Called run(const QStringList& arguments) const {
        QProcess process;
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        // As on a server: no screen, and nobody has set the session's folders up.
        for (const char* name :
             {"QT_QPA_PLATFORM", "DISPLAY", "WAYLAND_DISPLAY", "XDG_RUNTIME_DIR"}) {
            environment.remove(QString::fromLatin1(name));
        }
        environment.insert(QStringLiteral("XDG_DATA_HOME"), folder.path());
        environment.insert(QStringLiteral("XDG_CONFIG_HOME"), folder.path());
        process.setProcessEnvironment(environment);
        process.start(QStringLiteral(PIPWRIGHT_PROGRAM), arguments);
        constexpr int kPatience = 120000;
        if (!process.waitForFinished(kPatience)) {
            process.kill();
            return {};
        }
        return {process.exitCode(), QString::fromUtf8(process.readAllStandardOutput()),
                QString::fromUtf8(process.readAllStandardError())};
    }

    [[nodiscard]] QString path(const char* name) const {
        return folder.filePath(QString::fromLatin1(name));
    }

    void write(const char* name, const char* content) const {
        QFile file(path(name));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(content);
    }

    static QString sample() { return QStringLiteral(PIPWRIGHT_SOURCE_DIR "/sample-data/orchard"); }

    QTemporaryDir folder;
};

/// Every file below a folder with its bytes.
QMap<QString, QByteArray> contentOf(const QString& folder) {
    QMap<QString, QByteArray> content;
    QDirIterator it(folder, QDir::Files, QDirIterator::Subdirectories);
    while (it.hasNext()) {
        QFile file(it.next());
        if (file.open(QIODevice::ReadOnly)) {
            content[QDir(folder).relativeFilePath(file.fileName())] = file.readAll();
        }
    }
    return content;
}

TEST_F(CommandLine, EveryCommandHasHelp) {
    const Called overview = run({QStringLiteral("--help")});
    EXPECT_EQ(overview.code, 0);
    for (const char* command : {"new", "import", "archive", "check", "labels", "sitting", "merit",
                                "verdict", "tasters", "keeping", "tour"}) {
        EXPECT_TRUE(overview.out.contains(QString::fromLatin1(command)));
        const Called help = run({QString::fromLatin1(command), QStringLiteral("--help")});
        EXPECT_EQ(help.code, 0) << command;
        EXPECT_TRUE(help.out.contains(QStringLiteral("Usage"))) << help.out.toStdString();
        EXPECT_TRUE(help.errors.isEmpty()) << help.errors.toStdString();
    }
}

TEST_F(CommandLine, WithoutAScreenTheWindowSaysSo) {
    const Called called = run({});
    EXPECT_EQ(called.code, 1);
    EXPECT_TRUE(called.errors.contains(QStringLiteral("there is no screen")));
    EXPECT_EQ(called.errors.count(QLatin1Char('\n')), 1);
}

TEST_F(CommandLine, WrongWordsEndWithTwo) {
    EXPECT_EQ(run({QStringLiteral("new")}).code, 2);
    EXPECT_EQ(run({QStringLiteral("check"), path("a"), path("b")}).code, 2);
    const Called unknown = run({QStringLiteral("archive"), QStringLiteral("--nonsense")});
    EXPECT_EQ(unknown.code, 2);
    EXPECT_TRUE(unknown.errors.contains(QStringLiteral("--help")));
}

TEST_F(CommandLine, ANewBookIsSound) {
    EXPECT_EQ(run({QStringLiteral("new"), path("mine.orchard")}).code, 0);
    const Called check = run({QStringLiteral("check"), path("mine.orchard")});
    EXPECT_EQ(check.code, 0) << check.errors.toStdString();
    EXPECT_TRUE(check.out.contains(QStringLiteral("sound")));
    EXPECT_EQ(run({QStringLiteral("new"), path("mine.orchard")}).code, 1) << "it is there already";
}

TEST_F(CommandLine, WhatIsNoBookIsRefusedWithARemedy) {
    write("letter.orchard", "Dear Mara, the stick you sent has taken.");
    const Called check = run({QStringLiteral("check"), path("letter.orchard")});
    EXPECT_EQ(check.code, 1);
    EXPECT_TRUE(check.errors.contains(QStringLiteral("letter.orchard")));
    EXPECT_EQ(run({QStringLiteral("archive"), path("nowhere.orchard"), path("x")}).code, 1);
    EXPECT_FALSE(QFile::exists(path("x")));
}

TEST_F(CommandLine, TheSampleGoesRoundByteForByte) {
    const Called in = run({QStringLiteral("import"), path("sample.orchard"), sample()});
    ASSERT_EQ(in.code, 0) << in.errors.toStdString();
    ASSERT_EQ(run({QStringLiteral("archive"), path("sample.orchard"), path("again")}).code, 0);
    const auto before = contentOf(sample());
    const auto after = contentOf(path("again"));
    EXPECT_EQ(before.keys(), after.keys());
    for (auto file = before.begin(); file != before.end(); ++file) {
        EXPECT_TRUE(after.value(file.key()) == file.value()) << file.key().toStdString();
    }
    EXPECT_EQ(run({QStringLiteral("check"), path("sample.orchard")}).code, 0);
}

TEST_F(CommandLine, ADryRunLeavesNothing) {
    const Called dry = run(
        {QStringLiteral("import"), path("sample.orchard"), sample(), QStringLiteral("--dry-run")});
    EXPECT_EQ(dry.code, 0) << dry.errors.toStdString();
    EXPECT_FALSE(QFile::exists(path("sample.orchard")));
}

TEST_F(CommandLine, ATableWithoutRecipeSaysWhatToDo) {
    ASSERT_EQ(run({QStringLiteral("new"), path("mine.orchard")}).code, 0);
    write("trees.csv", "code,row,place\nHB20-01,1,1\n");
    EXPECT_EQ(run({QStringLiteral("import"), path("mine.orchard"), path("trees.csv")}).code, 2);
    const Called unknown = run({QStringLiteral("import"), path("mine.orchard"), path("trees.csv"),
                                QStringLiteral("--recipe"), QStringLiteral("tree list")});
    EXPECT_EQ(unknown.code, 1);
    EXPECT_TRUE(unknown.errors.contains(QStringLiteral("recipe")));
}

TEST_F(CommandLine, LabelsOfTheSampleBecomeAPdf) {
    ASSERT_EQ(run({QStringLiteral("import"), path("sample.orchard"), sample()}).code, 0);
    const Called labels =
        run({QStringLiteral("labels"), path("sample.orchard"), path("labels.pdf")});
    EXPECT_TRUE(labels.code == 0 || labels.errors.contains(QStringLiteral("mm")))
        << labels.errors.toStdString();
    QFile pdf(path("labels.pdf"));
    ASSERT_TRUE(pdf.open(QIODevice::ReadOnly));
    EXPECT_TRUE(pdf.read(5) == "%PDF-");
    const Called nobody = run({QStringLiteral("labels"), path("sample.orchard"), path("no.pdf"),
                               QStringLiteral("no such tree")});
    EXPECT_EQ(nobody.code, 1);
    EXPECT_FALSE(QFile::exists(path("no.pdf")));
}

TEST_F(CommandLine, ASittingIsPlannedKeptAndPrinted) {
    ASSERT_EQ(run({QStringLiteral("import"), path("sample.orchard"), sample()}).code, 0);
    QStringList words{QStringLiteral("sitting"), path("sample.orchard"),
                      QStringLiteral("--date"),  QStringLiteral("2026-08-22"),
                      QStringLiteral("--title"), QStringLiteral("Saturday"),
                      QStringLiteral("--draw"),  QStringLiteral("7")};
    for (const char* name : {"Annis Tarrow", "BQ", "Corra Venn"}) {
        words << QStringLiteral("--taster") << QString::fromLatin1(name);
    }
    const QStringList lots{QStringLiteral("AT15-001=t4sf2"), QStringLiteral("AT15-002=t4sf2"),
                           QStringLiteral("AT15-003=t4sf2"), QStringLiteral("AT15-004=t7sf2"),
                           QStringLiteral("AT15-012=d4sf2")};
    const Called dry = run(words + lots);
    ASSERT_EQ(dry.code, 0) << dry.errors.toStdString();
    EXPECT_TRUE(dry.out.contains(QStringLiteral("Bodo Quill:  ")));
    EXPECT_TRUE(dry.errors.contains(QStringLiteral("AT15-004 is not in its prime")));
    EXPECT_TRUE(dry.errors.contains(QStringLiteral("AT15-012 lay on the ground")));
    EXPECT_TRUE(dry.errors.contains(QStringLiteral("Bodo Quill: Raw plums")));
    EXPECT_TRUE(dry.errors.contains(QStringLiteral("iodine")));
    const Called kept =
        run(words + lots +
            QStringList{QStringLiteral("--keep"), QStringLiteral("--sheets"), path("sheets.pdf"),
                        QStringLiteral("--key"), path("key.pdf"), QStringLiteral("--csv"),
                        path("orders.csv"), QStringLiteral("--paper"), QStringLiteral("letter"),
                        QStringLiteral("--benchmark"), QStringLiteral("Marchbell=t4sf2")});
    ASSERT_EQ(kept.code, 0) << kept.errors.toStdString();
    EXPECT_TRUE(kept.out.contains(QStringLiteral("planned, 7 lots, 3 tasters")));
    EXPECT_TRUE(kept.out.contains(QStringLiteral("Marchbell is the benchmark")));
    for (const char* name : {"sheets.pdf", "key.pdf"}) {
        QFile pdf(path(name));
        ASSERT_TRUE(pdf.open(QIODevice::ReadOnly)) << name;
        EXPECT_TRUE(pdf.read(5) == "%PDF-");
    }
    QFile csv(path("orders.csv"));
    ASSERT_TRUE(csv.open(QIODevice::ReadOnly));
    EXPECT_EQ(QString::fromUtf8(csv.readAll()).count(QStringLiteral("\r\n")), 1 + 3 * 6);
    EXPECT_EQ(run({QStringLiteral("check"), path("sample.orchard")}).code, 0);
    // What cannot be read is refused, and nothing is kept.
    EXPECT_EQ(run(words + QStringList{QStringLiteral("AT15-001=zzz"), lots[1]}).code, 1);
    EXPECT_EQ(run(words + QStringList{QStringLiteral("nothing"), lots[1]}).code, 1);
    EXPECT_EQ(run({QStringLiteral("sitting"), path("sample.orchard"), lots[0]}).code, 2);
}

TEST_F(CommandLine, VerdictsGoByTheThresholdsSetInTheWindow) {
    ASSERT_EQ(run({QStringLiteral("import"), path("sample.orchard"), sample()}).code, 0);
    const QStringList words{QStringLiteral("verdict"), path("sample.orchard")};
    const Called proposed = run(words);
    EXPECT_TRUE(proposed.out.contains(QStringLiteral("80 % and 2 crop years")));
    ASSERT_TRUE(QDir(folder.path()).mkpath(QStringLiteral("pipwright")));
    QFile settings(path("pipwright/pipwright.conf"));
    ASSERT_TRUE(settings.open(QIODevice::WriteOnly));
    settings.write("[merit]\nname-above-best=0.99\n");
    settings.close();
    const Called own = run(words);
    EXPECT_TRUE(own.out.contains(QStringLiteral("99 % and 2 crop years"))) << own.out.toStdString();
    EXPECT_GT(proposed.out.count(QStringLiteral("name talk")),
              own.out.count(QStringLiteral("name talk")));
}

TEST_F(CommandLine, TellsMeritsVerdictsTastersAndKeeping) {
    ASSERT_EQ(run({QStringLiteral("import"), path("sample.orchard"), sample()}).code, 0);
    QFile file(path("sample.orchard"));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QByteArray before = file.readAll();
    for (const char* command : {"merit", "verdict", "tasters", "keeping"}) {
        const QStringList words{QString::fromLatin1(command), path("sample.orchard")};
        const Called text = run(words);
        ASSERT_EQ(text.code, 0) << command << text.errors.toStdString();
        const Called csv = run(words + QStringList{QStringLiteral("--csv")});
        ASSERT_EQ(csv.code, 0) << command << csv.errors.toStdString();
        const Called json = run(words + QStringList{QStringLiteral("--json")});
        ASSERT_EQ(json.code, 0) << command << json.errors.toStdString();
        const auto rows =
            QJsonDocument::fromJson(json.out.toUtf8()).object()[QStringLiteral("rows")].toArray();
        EXPECT_GT(rows.size(), 0) << command;
        EXPECT_GE(csv.out.count(QStringLiteral("\r\n")), rows.size()) << command;
        // A book that had no tasting yet gets a sentence.
        const Called early =
            run(words + QStringList{QStringLiteral("--as-of"), QStringLiteral("1950-01-01")});
        EXPECT_EQ(early.code, 1) << command;
        EXPECT_TRUE(early.errors.contains(QStringLiteral("Nothing has been scored yet")))
            << early.errors.toStdString();
        EXPECT_EQ(run(words + QStringList{QStringLiteral("--as-of"), QStringLiteral("May")}).code,
                  2);
        EXPECT_EQ(run(words + QStringList{QStringLiteral("--csv"), QStringLiteral("--json")}).code,
                  2);
    }
    const Called sugar = run({QStringLiteral("merit"), path("sample.orchard"),
                              QStringLiteral("--trait"), QStringLiteral("soluble_solids")});
    EXPECT_EQ(sugar.code, 0) << sugar.errors.toStdString();
    const Called unknown = run({QStringLiteral("merit"), path("sample.orchard"),
                                QStringLiteral("--trait"), QStringLiteral("wingspan")});
    EXPECT_EQ(unknown.code, 1);
    EXPECT_TRUE(unknown.errors.contains(QStringLiteral("no trait \"wingspan\"")));
    file.seek(0);
    EXPECT_TRUE(file.readAll() == before);
}

} // namespace
