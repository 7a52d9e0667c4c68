#include "ui/tasting/plan_words.h"

#include "ui/widgets/number_text.h"

#include <QCoreApplication>

#include <cstdlib>

namespace pipwright::ui {

namespace {

struct PlanWords {
    Q_DECLARE_TR_FUNCTIONS(pipwright::ui::PlanWords)
};

QString named(const PlanRemark& one) {
    return QString::fromStdString(one.name);
}

QString timesWords(const ServingEvenness& even) {
    const auto number = [](int n) {
        return n == 0   ? PlanWords::tr("never")
               : n == 1 ? PlanWords::tr("once")
                        : PlanWords::tr("%n times", nullptr, n);
    };
    return even.fewest == even.most
               ? number(even.fewest)
               : PlanWords::tr("%1 to %2").arg(number(even.fewest), number(even.most));
}

QString orderWords(const PlanRemark& one) {
    const QString counts =
        PlanWords::tr("%1 for %2: a lot stands in the same place %3 and directly after the same "
                      "other lot %4.")
            .arg(PlanWords::tr("%n lot(s)", nullptr, one.number),
                 PlanWords::tr("%n taster(s)", nullptr, one.other), timesWords(one.places),
                 timesWords(one.followings));
    if (one.kind == PlanRemarkKind::evenOrders) {
        return counts + QLatin1Char(' ') +
               PlanWords::tr("Imbalance 0: no orders of these numbers are more even.");
    }
    return counts + QLatin1Char(' ') +
           PlanWords::tr("Imbalance %1 (sum of squares above the least possible): one lot or "
                         "taster more or less may even it out.")
               .arg(numberText(one.places.imbalance + one.followings.imbalance, 0));
}

QString deedWords(const PlanRemark& one) {
    switch (one.kind) {
    case PlanRemarkKind::codesDrawn:
        return PlanWords::tr("Codes differ in two digits or more, none reads as a number upside "
                             "down, none was used lately. Drawn with number %1.")
            .arg(one.other);
    case PlanRemarkKind::benchmarkTwice:
        if (one.other == 0) {
            return PlanWords::tr("%1 is the benchmark, hidden twice under two codes: how far "
                                 "a taster's two scores lie apart shows what a score is worth.")
                .arg(named(one));
        }
        if (one.number == 0) {
            return PlanWords::tr("%1 is the benchmark, hidden twice under two codes; it usually "
                                 "ripens with the middle lot.")
                .arg(named(one));
        }
        return (one.number > 0
                    ? PlanWords::tr("%1 is the benchmark, hidden twice under two codes; it "
                                    "usually ripens %n day(s) after the middle lot.",
                                    nullptr, one.number)
                    : PlanWords::tr("%1 is the benchmark, hidden twice under two codes; it "
                                    "usually ripens %n day(s) before the middle lot.",
                                    nullptr, std::abs(one.number)))
            .arg(named(one));
    case PlanRemarkKind::repeatServed:
        return (one.other == 0 ? PlanWords::tr("%1 was served before and comes again, for each "
                                               "taster's own noise; it has kept longer since.")
                               : PlanWords::tr("%1 was served %n day(s) ago and comes again, for "
                                               "each taster's own noise; it has kept longer since.",
                                               nullptr, one.number))
            .arg(named(one));
    case PlanRemarkKind::pauseAfter:
        return PlanWords::tr("Pause, water and a plain cracker after %n lot(s).", nullptr,
                             one.number);
    default:
        return orderWords(one);
    }
}

QString fruitCaution(const PlanRemark& one) {
    switch (one.kind) {
    case PlanRemarkKind::rotten:
        return PlanWords::tr("%1 is rotten in part: look at it, do not eat of it (patulin), also "
                             "not around the rotten place.");
    case PlanRemarkKind::lookOnly:
        return PlanWords::tr("%1 is not in its prime: look only, no score; a score would say "
                             "nothing of the tree.");
    case PlanRemarkKind::fallen:
        return PlanWords::tr("%1 lay on the ground: wash it; nothing for children, old people, "
                             "anyone pregnant or ill. Fallen fruit is riper than its tree.");
    case PlanRemarkKind::wormy:
        return PlanWords::tr("%1 has insects in it: cut the places out; it ripened early and "
                             "tastes of it.");
    case PlanRemarkKind::pecked:
        return PlanWords::tr("%1 is pecked by birds: cut widely around it and wash, or leave it "
                             "out.");
    case PlanRemarkKind::ripenessUnknown:
        return PlanWords::tr("%1 has no ripeness yet: without it the score speaks for little.");
    case PlanRemarkKind::oneFruit:
        return PlanWords::tr("%1 is a single fruit: cut two to five and mix the slices, if there "
                             "are.");
    case PlanRemarkKind::servedTwice:
        return PlanWords::tr("%1 is on the list more than once.");
    case PlanRemarkKind::oneTaster:
        return PlanWords::tr("%1 tastes alone: nothing will be known of agreement.");
    default:
        return {};
    }
}

} // namespace

QString planRemarkWords(const PlanRemark& one) {
    if (const QString caution = fruitCaution(one); !caution.isEmpty()) {
        return caution.arg(named(one));
    }
    switch (one.kind) {
    case PlanRemarkKind::unequalDays:
        return PlanWords::tr("The lots were kept unequally long, %1 to %2: what kept longer is "
                             "softer and less sour for that alone.")
            .arg(one.number)
            .arg(PlanWords::tr("%n day(s)", nullptr, one.other));
    case PlanRemarkKind::unequalPaths:
        return PlanWords::tr("The lots were not kept in the same place: compare what lay "
                             "together.");
    case PlanRemarkKind::daysUnknown:
        return PlanWords::tr("Nobody wrote how long these were kept: %1.")
            .arg(QString::fromStdString(one.words));
    case PlanRemarkKind::manyLots:
        return PlanWords::tr("%n lots are many: six to nine are tasted well in half an hour.",
                             nullptr, one.number);
    case PlanRemarkKind::noBenchmark:
        return PlanWords::tr("No benchmark is hidden among the lots: nothing will tell what a "
                             "score is worth.");
    case PlanRemarkKind::sighted:
        return PlanWords::tr("The tasters know what they eat: hope scores too.");
    case PlanRemarkKind::healthNote:
        return QStringLiteral("%1: %2").arg(named(one), QString::fromStdString(one.words));
    default:
        return deedWords(one);
    }
}

QString tastingCaution() {
    return PlanWords::tr(
        "Leave out rotten fruit, also around the rotten place (patulin), and whatever iodine "
        "touched: nobody eats, feeds or composts that. Fallen and wormy fruit is washed and cut "
        "out, and not for children, old people, anyone pregnant or ill. Taste nothing within the "
        "waiting time of a spray. Who reacts to birch pollen may itch or swell from raw apple, "
        "pear, plum or cherry: say so before, stop at once; trouble breathing needs an ambulance. "
        "Do not chew pips or stones.");
}

SittingWords translatedSittingWords() {
    SittingWords words;
    const auto put = [](std::string& into, const QString& text) { into = text.toStdString(); };
    put(words.sheetOf, PlanWords::tr("Tasting sheet of %1"));
    put(words.howTo,
        PlanWords::tr("Taste in this order, from top to bottom. Eat a slice with its skin; write 1 "
                      "to 9, halves if you like. Water between the lots. Nobody speaks before the "
                      "sheets are turned."));
    put(words.pause, PlanWords::tr("Pause: water, a plain cracker, five minutes"));
    put(words.place, PlanWords::tr("no.", "heading of the place in the order"));
    put(words.code, PlanWords::tr("code"));
    put(words.liking, PlanWords::tr("1 to 9"));
    put(words.remarks, PlanWords::tr("what you taste, in your own words"));
    put(words.bestOnes, PlanWords::tr("The best, by code:"));
    words.bestPlaces = {PlanWords::tr("first").toStdString(), PlanWords::tr("second").toStdString(),
                        PlanWords::tr("third").toStdString()};
    put(words.lookOnly, PlanWords::tr("Look only, no score: %1"));
    const std::array<QString, 9> scale{
        PlanWords::tr("spat it out"), PlanWords::tr("bad"),       PlanWords::tr("poor"),
        PlanWords::tr("rather poor"), PlanWords::tr("so so"),     PlanWords::tr("rather good"),
        PlanWords::tr("good"),        PlanWords::tr("very good"), PlanWords::tr("none better")};
    for (std::size_t i = 0; i < scale.size(); ++i) {
        put(words.scale.at(i), scale.at(i));
    }
    put(words.caution, tastingCaution());
    put(words.keyTitle, PlanWords::tr("Key of the sitting"));
    put(words.keyAdvice, PlanWords::tr("Only for whoever cuts and serves. Fold it, and keep it "
                                       "until every sheet is entered."));
    put(words.fruit, PlanWords::tr("fruit"));
    put(words.where, PlanWords::tr("where"));
    put(words.condition, PlanWords::tr("condition"));
    put(words.role, PlanWords::tr("why"));
    put(words.orders, PlanWords::tr("Who gets what, in this order"));
    put(words.drawn, PlanWords::tr("Drawn with number %1."));
    return words;
}

} // namespace pipwright::ui
