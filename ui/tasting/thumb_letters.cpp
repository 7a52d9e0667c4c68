#include "ui/tasting/thumb_letters.h"

#include "ui/book/orchard_words.h"

#include <QCoreApplication>
#include <QStringList>

#include <array>

namespace pipwright::ui {

namespace {

struct Letters {
    Q_DECLARE_TR_FUNCTIONS(pipwright::ui::ThumbLetters)
};

template <typename Enum>
struct Letter {
    Enum value;
    char16_t letter;
};

constexpr std::array<Letter<Origin>, 5> kOrigins = {{{Origin::pickedRipe, u't'},
                                                     {Origin::pickedEarly, u'e'},
                                                     {Origin::droppedToday, u'd'},
                                                     {Origin::onGroundLonger, u'g'},
                                                     {Origin::shaken, u's'}}};

constexpr std::array<Letter<Ripeness>, 7> kRipeness = {{{Ripeness::green, u'1'},
                                                        {Ripeness::gettingThere, u'2'},
                                                        {Ripeness::earlyPrime, u'3'},
                                                        {Ripeness::prime, u'4'},
                                                        {Ripeness::latePrime, u'5'},
                                                        {Ripeness::onItsWayOut, u'6'},
                                                        {Ripeness::gone, u'7'}}};

constexpr std::array<Letter<Soundness>, 5> kSoundness = {{{Soundness::sound, u's'},
                                                          {Soundness::insect, u'i'},
                                                          {Soundness::bird, u'b'},
                                                          {Soundness::split, u'c'},
                                                          {Soundness::rot, u'r'}}};

template <typename Enum, std::size_t N>
std::optional<Enum> typedAs(const QString& typed, const std::array<Letter<Enum>, N>& letters,
                            QString (*word)(Enum)) {
    const QString text = typed.trimmed();
    if (text.isEmpty() || text == QStringLiteral("?")) {
        return Enum::unknown;
    }
    if (text.size() == 1) {
        for (const auto& one : letters) {
            if (text[0].toLower() == QChar(one.letter)) {
                return one.value;
            }
        }
        return std::nullopt;
    }
    std::optional<Enum> found;
    for (const auto& one : letters) {
        const QString name = word(one.value);
        if (name.compare(text, Qt::CaseInsensitive) == 0) {
            return one.value;
        }
        if (name.startsWith(text, Qt::CaseInsensitive)) {
            if (found) {
                return std::nullopt; // two words begin like this
            }
            found = one.value;
        }
    }
    return found;
}

template <typename Enum, std::size_t N>
QString legend(const std::array<Letter<Enum>, N>& letters, QString (*word)(Enum)) {
    QStringList parts;
    for (const auto& one : letters) {
        parts << QString(QChar(one.letter)) + QChar(0xA0) + word(one.value);
    }
    parts << Letters::tr("? unknown");
    return parts.join(QStringLiteral(" · "));
}

} // namespace

std::optional<Origin> originTyped(const QString& typed) {
    return typedAs(typed, kOrigins, originWord);
}
std::optional<Ripeness> ripenessTyped(const QString& typed) {
    return typedAs(typed, kRipeness, ripenessWord);
}
std::optional<Soundness> soundnessTyped(const QString& typed) {
    return typedAs(typed, kSoundness, soundnessWord);
}
QString originLetters() {
    return legend(kOrigins, originWord);
}
QString ripenessLetters() {
    return legend(kRipeness, ripenessWord);
}
QString soundnessLetters() {
    return legend(kSoundness, soundnessWord);
}
QString pathLetters() {
    return Letters::tr("days off the tree: f5 fridge five days · c2 counter · l60 cellar · f14c3 "
                       "fridge, then counter · 0 straight off the tree · ? unknown");
}

} // namespace pipwright::ui
