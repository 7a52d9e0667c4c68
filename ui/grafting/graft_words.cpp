#include "ui/grafting/graft_words.h"

#include "ui/book/orchard_words.h"
#include "ui/widgets/number_text.h"

#include <QCoreApplication>

#include <cmath>

namespace pipwright::ui {

namespace {

struct GraftWords {
    Q_DECLARE_TR_FUNCTIONS(pipwright::ui::GraftWords)
};

} // namespace

QString wishStateWord(WishState state) {
    switch (state) {
    case WishState::open:
        return GraftWords::tr("open");
    case WishState::ordered:
        return GraftWords::tr("ordered");
    case WishState::done:
        return GraftWords::tr("done");
    case WishState::dropped:
        return GraftWords::tr("dropped");
    case WishState::unknown:
        break;
    }
    return GraftWords::tr("not known");
}

const std::vector<WishState>& wishStates() {
    static const std::vector<WishState> all = {WishState::open, WishState::ordered, WishState::done,
                                               WishState::dropped, WishState::unknown};
    return all;
}

const std::vector<GraftMethod>& graftMethods() {
    static const std::vector<GraftMethod> all = {
        GraftMethod::unknown, GraftMethod::whipAndTongue, GraftMethod::cleft, GraftMethod::bark,
        GraftMethod::chipBud, GraftMethod::tBud,          GraftMethod::other};
    return all;
}

QString checkpointWord(GraftCheckpoint checkpoint) {
    switch (checkpoint) {
    case GraftCheckpoint::fourToSixWeeks:
        return GraftWords::tr("4 to 6 weeks");
    case GraftCheckpoint::midsummer:
        return GraftWords::tr("midsummer");
    case GraftCheckpoint::leafFall:
        return GraftWords::tr("leaf fall");
    case GraftCheckpoint::unknown:
        break;
    }
    return GraftWords::tr("some time");
}

QString copiesWords(const LivingCopies& copies) {
    if (copies.none()) {
        return GraftWords::tr("⚠ none alive");
    }
    QStringList sites;
    for (const std::string& site : copies.sites) {
        sites << QString::fromStdString(site);
    }
    const QString where =
        sites.isEmpty() ? GraftWords::tr("place not known") : sites.join(QStringLiteral(", "));
    if (copies.plants == 1) {
        return GraftWords::tr("⚠ only tree, %1").arg(where);
    }
    if (copies.onlyTree()) {
        return GraftWords::tr("⚠ %n limb(s) on a single tree, %1", nullptr, copies.plants)
            .arg(where);
    }
    return GraftWords::tr("%n plant(s) on %1 trees, %2", nullptr, copies.plants)
        .arg(QString::number(copies.stems), where);
}

QString compassWord(double degrees) {
    constexpr int kPoints = 16;
    constexpr double kStep = 360.0 / kPoints;
    const QStringList names = GraftWords::tr("N NNE NE ENE E ESE SE SSE S SSW SW WSW W WNW NW NNW")
                                  .split(QLatin1Char(' '));
    const double turned = std::fmod(std::fmod(degrees, 360.0) + 360.0, 360.0);
    const int point = static_cast<int>(std::lround(turned / kStep)) % kPoints;
    return names.value(point);
}

QString limbWords(const FrameLimb& limb) {
    QStringList words;
    words << (limb.bearing ? GraftWords::tr("%1° (%2)")
                                 .arg(numberText(*limb.bearing, 0), compassWord(*limb.bearing))
                           : GraftWords::tr("bearing not known"));
    words << (limb.height ? GraftWords::tr("%1 cm up").arg(numberText(*limb.height, 0))
                          : GraftWords::tr("height not known"));
    if (limb.order) {
        words << GraftWords::tr("number %1 from the trunk").arg(*limb.order);
    }
    if (!limb.mark.empty()) {
        words << GraftWords::tr("mark %1").arg(QString::fromStdString(limb.mark));
    }
    if (limb.state != PlantState::growing) {
        words << stateWord(limb.state);
    }
    return words.join(QStringLiteral(", "));
}

} // namespace pipwright::ui
