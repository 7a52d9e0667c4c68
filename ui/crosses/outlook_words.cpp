#include "ui/crosses/outlook_words.h"

#include "ui/widgets/number_text.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>
#include <cmath>

namespace pipwright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(pipwright::ui::CrossOutlook)
};

constexpr int kDecimalsOfF = 3;
constexpr int kDecimalsOfP = 3;
constexpr std::size_t kMostFounders = 8;

QString nameOf(const OrchardView& view, Index genotype) {
    return QString::fromStdString(view.genotypes()[genotype].called());
}

QString namesOf(const OrchardView& view, const std::vector<Index>& genotypes) {
    constexpr std::size_t kMostNames = 6;
    QStringList names;
    for (const Index one : genotypes) {
        if (static_cast<std::size_t>(names.size()) == kMostNames) {
            names << QStringLiteral("…");
            break;
        }
        names << nameOf(view, one);
    }
    return names.join(QStringLiteral(", "));
}

/// A share that is exact: 12.5 %, 50 %.
QString shareText(double share) {
    const double percent = 100 * share;
    const bool whole = std::abs(percent - std::round(percent)) < 1e-9;
    return numberText(percent, whole ? 0 : 1, QStringLiteral("%"));
}

QString seedlingsText(const SCompatibility& compatibility) {
    QStringList classes;
    for (const SClass& one : compatibility.seedlings) {
        QString alleles = QString::fromStdString(one.genotype.text());
        alleles.replace(QLatin1Char(' '), QChar::Nbsp); // the two stay on one line
        classes << QStringLiteral("%1 %2").arg(alleles, shareText(one.share));
    }
    return classes.isEmpty() ? QString()
                             : Words::tr("Seedlings: %1.").arg(classes.join(QStringLiteral(", ")));
}

QString predictedText(const SCompatibility& compatibility) {
    switch (compatibility.kind) {
    case SCompatibility::Kind::incompatible:
        return Words::tr("Incompatible: the style rejects all of this pollen. Expect few seeds, if "
                         "any.");
    case SCompatibility::Kind::semiCompatible:
        return Words::tr("Half compatible: half of the pollen is rejected.");
    case SCompatibility::Kind::compatible:
        return Words::tr("Compatible: all of the pollen is accepted.");
    case SCompatibility::Kind::notKnown:
        return Words::tr("Between %1 and %2 of the pollen is accepted; an S allele that is not "
                         "known decides.")
            .arg(shareText(compatibility.acceptedLow), shareText(compatibility.acceptedHigh));
    case SCompatibility::Kind::triploidPollen:
        break;
    }
    return Words::tr("Not predicted: the pollen of a triploid is poor.");
}

QString alleleText(const std::string& alleles) {
    return alleles.empty() ? Words::tr("unknown") : QString::fromStdString(alleles);
}

/// "S4 S5 (50 %) or S4 S7 (50 %) by its parents"
QString possibleText(const std::string& written, const std::vector<SClass>& possible) {
    constexpr std::size_t kMostClasses = 4;
    if (!written.empty() || possible.empty()) {
        return alleleText(written);
    }
    if (possible.size() > kMostClasses) {
        return Words::tr("one of %1 pairs, by its parents").arg(possible.size());
    }
    QStringList classes;
    for (const SClass& one : possible) {
        classes << QStringLiteral("%1 (%2)").arg(QString::fromStdString(one.genotype.text()),
                                                 shareText(one.share));
    }
    return Words::tr("%1, by its parents")
        .arg(classes.join(Words::tr(" or ", "between possible S alleles")));
}

/// What follows though the alleles of a parent are not written down.
QString missingText(const CrossOutlook& outlook) {
    const QString pair = Words::tr("S alleles of the seed parent: %1; of the pollen parent: %2.")
                             .arg(possibleText(outlook.seedAlleles, outlook.seedPossible),
                                  possibleText(outlook.pollenAlleles, outlook.pollenPossible));
    if (outlook.possible) {
        const PossiblePollen& pollen = *outlook.possible;
        if (pollen.acceptedLow == pollen.acceptedHigh) {
            return Words::tr("%1 of the pollen is accepted, whichever it is.")
                       .arg(shareText(pollen.acceptedLow)) +
                   QLatin1Char(' ') + pair;
        }
        return Words::tr("Between %1 and %2 of the pollen is accepted, %3 on average.")
                   .arg(shareText(pollen.acceptedLow), shareText(pollen.acceptedHigh),
                        shareText(pollen.acceptedMean)) +
               QLatin1Char(' ') + pair;
    }
    const bool neither = outlook.seedPossible.empty() && outlook.pollenPossible.empty();
    return Words::tr("Not predicted.") + QLatin1Char(' ') + pair + QLatin1Char(' ') +
           (neither ? Words::tr("Write them down for both to see how much pollen is accepted.")
                    : Words::tr("Pollen is rejected where it has an allele of the style; the other "
                                "parent's alleles decide."));
}

} // namespace

QString pollenText(const CrossOutlook& outlook) {
    switch (outlook.sWord) {
    case SWord::notSelfIncompatible:
        return Words::tr("The species accepts its own pollen; S alleles do not hinder.");
    case SWord::pollenUnknown:
        return Words::tr("Not predicted: the pollen parent is unknown.");
    case SWord::allelesMissing:
        return missingText(outlook);
    case SWord::unreadable:
        return Words::tr("Unknown: the S alleles \"%1\" and \"%2\" cannot both be read. Write "
                         "them as S2 S5.")
            .arg(alleleText(outlook.seedAlleles), alleleText(outlook.pollenAlleles));
    case SWord::predicted:
        break;
    }
    QStringList sentences{predictedText(*outlook.compatibility)};
    sentences << seedlingsText(*outlook.compatibility);
    if (outlook.incompatibilityUnsure) {
        sentences << Words::tr("So if the species rejects its own pollen, which is not known.");
    }
    sentences.removeAll(QString());
    return sentences.join(QLatin1Char(' '));
}

QString inbreedingText(const CrossOutlook& outlook, const OrchardView& view) {
    if (outlook.noF) {
        return Words::tr("Not computed. %1").arg(QString::fromStdString(outlook.noF->what));
    }
    if (outlook.inbreeding) {
        const QString value = numberText(*outlook.inbreeding, kDecimalsOfF);
        return outlook.unknownShare > 0
                   ? Words::tr("F = %1 or more: %2 of the ancestry is unknown and counts as "
                               "unrelated.")
                         .arg(value, shareText(outlook.unknownShare))
                   : Words::tr("F = %1, founders taken as unrelated.").arg(value);
    }
    if (!outlook.anyFather || outlook.anyFather->fathers == 0) {
        return Words::tr("Unknown, as a parent is unknown.");
    }
    const AnyFather& any = *outlook.anyFather;
    const QString most = any.nearest ? Words::tr("at most %1 (%2)")
                                           .arg(numberText(any.mostInbreeding, kDecimalsOfF),
                                                nameOf(view, *any.nearest))
                                     : Words::tr("none is known to be related");
    return Words::tr("F = 0 if the pollen came from elsewhere. If it was one of the %n growing "
                     "genotype(s) of this book: %1 on average, %2.",
                     nullptr, any.fathers)
        .arg(numberText(any.meanInbreeding, kDecimalsOfF), most);
}

QString foundersText(const CrossOutlook& outlook, const OrchardView& view) {
    QStringList parts;
    double others = 0;
    for (const FounderPart& part : outlook.founders) {
        if (static_cast<std::size_t>(parts.size()) < kMostFounders) {
            parts << QStringLiteral("%1 %2").arg(nameOf(view, part.founder), shareText(part.share));
        } else {
            others += part.share;
        }
    }
    if (others > 0) {
        parts << Words::tr("others %1").arg(shareText(others));
    }
    if (outlook.unknownShare > 0) {
        parts << Words::tr("unknown %1").arg(shareText(outlook.unknownShare));
    }
    return parts.join(QStringLiteral(", "));
}

QStringList warningTexts(const CrossOutlook& outlook, const OrchardView& view) {
    QStringList warnings;
    if (!outlook.triploids.empty()) {
        warnings << Words::tr("Triploid: %1. Expect few good seeds, and weak seedlings with odd "
                              "chromosome numbers.")
                        .arg(namesOf(view, outlook.triploids));
    }
    if (outlook.unsureShares) {
        warnings << Words::tr("A triploid stands among the ancestors. One of its parents gave it "
                              "two thirds, but which one is not known; the shares count halves.");
    }
    if (!outlook.tooYoung.empty()) {
        warnings << Words::tr("Too young to be a parent in that year: %1. Correct a year or the "
                              "parent.")
                        .arg(namesOf(view, outlook.tooYoung));
    }
    if (!outlook.contradicted.empty()) {
        warnings << Words::tr("The S alleles of these seedlings cannot come from these parents: "
                              "%1. A parent, a label or an allele is wrong.")
                        .arg(namesOf(view, outlook.contradicted));
    }
    return warnings;
}

QString raisingText(const RaisingAdvice& advice, const RaisingRecord& record) {
    const QLocale locale;
    QStringList sentences;
    sentences << Words::tr("%1 of the seedlings have it all; raise %2 to be judged.")
                     .arg(shareText(advice.wantedShare), locale.toString(advice.seedlings));
    if (!advice.seeds || !record.germination) {
        sentences << Words::tr("How many seeds that takes is unknown: no cross of the species "
                               "tells how its seeds germinated.");
        return sentences.join(QLatin1Char(' '));
    }
    const QString worst =
        advice.seedsAtWorst ? locale.toString(*advice.seedsAtWorst) : Words::tr("many more");
    sentences << Words::tr("Sow %1 seeds (%2 to %3, as well as the book knows).")
                     .arg(locale.toString(*advice.seeds),
                          locale.toString(advice.seedsAtBest.value_or(*advice.seeds)), worst);
    sentences << Words::tr("%1 of %2 seeds germinated.")
                     .arg(locale.toString(record.germination->counted),
                          locale.toString(record.germination->of));
    sentences << (record.survival ? Words::tr("%1 of %2 were planted out.")
                                        .arg(locale.toString(record.survival->counted),
                                             locale.toString(record.survival->of))
                                  : Words::tr("How many of them live is unknown and counted as "
                                              "all."));
    return sentences.join(QLatin1Char(' '));
}

QString countedText(const SegregationTest& test, const std::vector<SegregationClass>& classes) {
    constexpr double kDoubtful = 0.05;
    QStringList expected;
    for (const double count : test.fit.expected) {
        expected << numberText(count, 1);
    }
    const double p = test.pValue();
    const QString value =
        p < 0.001 ? QStringLiteral("p\u00A0<\u00A0%1").arg(numberText(0.001, kDecimalsOfP))
                  : QStringLiteral("p\u00A0=\u00A0%1").arg(numberText(p, kDecimalsOfP));
    const QString how = test.readExact ? Words::tr("Exact test, as few are expected")
                                       : Words::tr("Chi-square %1, 1 degree of freedom")
                                             .arg(numberText(test.fit.pearson.statistic, 2));
    const QString verdict =
        p < kDoubtful
            ? Words::tr("This hardly fits %1.").arg(shareText(classes.front().share))
            : Words::tr("This does not speak against %1.").arg(shareText(classes.front().share));
    return Words::tr("Expected %1. %2: %3. %4")
        .arg(expected.join(QStringLiteral(" : ")), how, value, verdict);
}

} // namespace pipwright::ui
