#include "ui/widgets/languages.h"

#include <QApplication>
#include <QFile>
#include <QRegularExpression>
#include <QXmlStreamReader>

#include <gtest/gtest.h>
#include <vector>

namespace pipwright::ui {
namespace {

/// One message of a file of words, as it is kept in the sources.
struct Message {
    QString source;
    QStringList forms; ///< one, or one for each grammatical number
    bool counted = false;
    bool finished = true;
};

void readTranslation(QXmlStreamReader& xml, Message& message) {
    message.finished = !xml.attributes().hasAttribute(QStringLiteral("type"));
    if (!message.counted) {
        message.forms.append(xml.readElementText());
        return;
    }
    while (xml.readNextStartElement()) {
        message.forms.append(xml.readElementText());
    }
}

std::vector<Message> messagesOf(const QString& language) {
    QFile file(QStringLiteral(PIPWRIGHT_SOURCE_DIR "/resources/translations/pipwright_%1.ts")
                   .arg(language));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << file.fileName().toStdString();
    QXmlStreamReader xml(&file);
    std::vector<Message> all;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement) {
            continue;
        }
        if (xml.name() == QLatin1String("message")) {
            all.emplace_back();
            all.back().counted = xml.attributes().hasAttribute(QStringLiteral("numerus"));
        } else if (xml.name() == QLatin1String("source")) {
            all.back().source = xml.readElementText();
        } else if (xml.name() == QLatin1String("translation")) {
            readTranslation(xml, all.back());
        }
    }
    EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
    return all;
}

/// The places for values, sorted: "%1 of %n" gives "%1", "%n".
QStringList placesIn(const QString& text) {
    static const QRegularExpression place(QStringLiteral("%L?\\d+|%n"));
    QStringList all;
    for (auto found = place.globalMatch(text); found.hasNext();) {
        all.append(found.next().captured());
    }
    all.sort();
    return all;
}

class Words : public ::testing::TestWithParam<const char*> {};

TEST_P(Words, AreFinished) {
    const auto all = messagesOf(QString::fromLatin1(GetParam()));
    ASSERT_GT(all.size(), 20U);
    for (const Message& message : all) {
        const std::string source = message.source.toStdString();
        EXPECT_TRUE(message.finished) << source;
        EXPECT_EQ(message.forms.size(), message.counted ? 2 : 1) << source;
        for (const QString& form : message.forms) {
            EXPECT_FALSE(form.isEmpty()) << source;
        }
    }
}

TEST_P(Words, KeepThePlacesForValues) {
    for (const Message& message : messagesOf(QString::fromLatin1(GetParam()))) {
        for (const QString& form : message.forms) {
            EXPECT_EQ(placesIn(form).join(QLatin1Char(' ')).toStdString(),
                      placesIn(message.source).join(QLatin1Char(' ')).toStdString())
                << message.source.toStdString();
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Languages, Words, ::testing::Values("de", "en"),
                         [](const auto& each) { return std::string(each.param); });

/// Joined words ("%1, planted ...") carry their blanks at the edges.
TEST(GermanWords, KeepBlanksAtTheEdges) {
    for (const Message& message : messagesOf(QStringLiteral("de"))) {
        for (const QString& form : message.forms) {
            EXPECT_EQ(form.startsWith(QLatin1Char(' ')),
                      message.source.startsWith(QLatin1Char(' ')))
                << message.source.toStdString();
            EXPECT_EQ(form.endsWith(QLatin1Char(' ')), message.source.endsWith(QLatin1Char(' ')))
                << message.source.toStdString();
        }
    }
}

TEST(AppliedLanguage, CountsInBothGrammaticalNumbers) {
    auto& application = *static_cast<QApplication*>(QCoreApplication::instance());
    const auto trees = [](int count) {
        return QCoreApplication::translate("pipwright::ui::EntryStrip", "%n tree(s)", nullptr,
                                           count)
            .toStdString();
    };
    applyLanguage(application, Language::german);
    EXPECT_EQ(trees(1), "1 Baum");
    EXPECT_EQ(trees(2), "2 Bäume");
    applyLanguage(application, Language::english);
    EXPECT_EQ(trees(1), "1 tree");
    EXPECT_EQ(trees(2), "2 trees");
}

} // namespace
} // namespace pipwright::ui
