#include "ui/shell/finder.h"

#include "core/units/text.h"
#include "ui/book/book_words.h"
#include "ui/book/open_book.h"
#include "ui/shell/actions.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <set>

namespace pipwright::ui {

namespace {

constexpr std::size_t kMostTrees = 8;
constexpr std::size_t kMostWords = 8;
constexpr std::size_t kMostCommands = 5;
constexpr int kMostLetters = 90;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(pipwright::ui::Finder)
};

QString text(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

QString shortened(const QString& words) {
    return words.size() <= kMostLetters ? words : words.left(kMostLetters - 1) + QChar(0x2026);
}

FoundThing treeFound(const OrchardView& view, Index plant) {
    FoundThing found;
    found.id = QStringLiteral("plant:") + text(view.plants()[plant].id.uuid.text());
    found.title = text(view.plantCode(plant));
    QString detail = text(view.placeText(plant));
    if (const auto genotype = view.plants()[plant].genotype) {
        const auto& entry = view.genotypes()[*genotype];
        if (!entry.name.empty() && entry.name != entry.code) {
            found.title += QStringLiteral(" · ") + text(entry.name);
        }
        const QString cross = crossWords(view, *genotype);
        detail += detail.isEmpty() || cross.isEmpty() ? cross : QStringLiteral(" · ") + cross;
    }
    found.detail = detail;
    found.kind = Words::tr("tree");
    found.icon = IconName::tree;
    return found;
}

FoundThing genotypeFound(const OrchardView& view, Index genotype) {
    const GenotypeEntry& entry = view.genotypes()[genotype];
    FoundThing found;
    found.id = QStringLiteral("genotype:") + text(entry.id.uuid.text());
    found.title = text(entry.called());
    found.detail = crossWords(view, genotype);
    found.kind = entry.benchmark ? Words::tr("benchmark") : Words::tr("genotype");
    found.icon = entry.benchmark ? IconName::benchmark : IconName::leaf;
    return found;
}

/// How well a name answers what was typed: exact, beginning, inside, or not at all.
int fit(const std::string& name, const std::string& wanted) {
    const std::string folded = foldedForSearch(name);
    if (folded == wanted) {
        return 3;
    }
    const auto at = folded.find(wanted);
    return at == std::string::npos ? 0 : at == 0 ? 2 : 1;
}

struct Candidate {
    int fit = 0;
    Index genotype = 0;
};

std::vector<Candidate> genotypesLike(const OrchardView& view, const std::string& wanted) {
    std::vector<Candidate> candidates;
    for (Index i = 0; i < view.genotypes().size(); ++i) {
        const GenotypeEntry& entry = view.genotypes()[i];
        const int best =
            entry.erased ? 0 : std::max(fit(entry.code, wanted), fit(entry.name, wanted));
        if (best > 0) {
            candidates.push_back({best, i});
        }
    }
    const auto better = [&view](const Candidate& a, const Candidate& b) {
        return a.fit != b.fit ? a.fit > b.fit
                              : naturalOrder(view.genotypes()[a.genotype].called(),
                                             view.genotypes()[b.genotype].called()) < 0;
    };
    const auto most = std::min(candidates.size(), kMostTrees);
    std::partial_sort(candidates.begin(), candidates.begin() + static_cast<std::ptrdiff_t>(most),
                      candidates.end(), better);
    candidates.resize(most);
    return candidates;
}

/// "3.40 m" or "3,4" as metres; nothing for a plain number, which is a place.
std::optional<double> metresTyped(std::string text) {
    std::replace(text.begin(), text.end(), ',', '.');
    const bool unit = text.ends_with("m");
    if (unit) {
        text = std::string(trimmed(std::string_view(text).substr(0, text.size() - 1)));
    }
    bool ok = false;
    const double metres = QString::fromStdString(text).toDouble(&ok);
    return ok && (unit || text.find('.') != std::string::npos) ? std::optional(metres)
                                                               : std::nullopt;
}

/// Plants at "row/position", or at "row/3.40" or "row 3.40 m" by the tape.
void addByPlace(const OrchardView& view, const std::string& typed, std::vector<FoundThing>& found) {
    constexpr double kTapeMetres = 0.05;
    const auto cut = typed.find_first_of("/ ");
    if (cut == std::string::npos) {
        return;
    }
    const std::string row = foldedForSearch(typed.substr(0, cut));
    const std::string place(trimmed(std::string_view(typed).substr(cut + 1)));
    const auto metres = metresTyped(place);
    if (typed[cut] == ' ' && !metres) {
        return; // words
    }
    for (const Index candidate : view.rowsInOrder()) {
        if (!row.empty() && foldedForSearch(view.rowName(candidate)) != row) {
            continue;
        }
        for (const Index at : view.positionsOf(candidate)) {
            const Position& position = view.positions()[at];
            const bool here =
                metres ? position.distance && std::abs(*position.distance - *metres) < kTapeMetres
                       : std::to_string(position.ordinal) == place;
            if (!here) {
                continue;
            }
            for (const Index plant : view.plantsAt(at)) {
                if (!view.plants()[plant].erased && found.size() < kMostTrees) {
                    found.push_back(treeFound(view, plant));
                }
            }
        }
    }
}

/// The genotype or plant a record of words belongs to.
std::optional<QString> ownerOf(const OpenBook& book, const Found& found) {
    const auto record = book.store().find(found.kind, found.record);
    if (!record || !*record) {
        return std::nullopt;
    }
    if (found.kind == Kind::plant) {
        return QStringLiteral("plant:") + text(found.record.text());
    }
    if (found.kind == Kind::genotype) {
        return QStringLiteral("genotype:") + text(found.record.text());
    }
    if (found.kind == Kind::score) { // by way of its lot
        const auto score = fromRecord<Score>(**record);
        return ownerOf(book, {Kind::lot, score.lot.uuid, {}});
    }
    const auto& fields = fieldsOf(found.kind);
    for (const auto name : {"plant", "genotype", "claimed_genotype"}) {
        for (std::size_t i = 0; i < fields.size(); ++i) {
            const auto* id = std::get_if<Uuid>(&(*record)->values[i]);
            if (id != nullptr && fields[i].name == name) {
                return (fields[i].refersTo == Kind::plant ? QStringLiteral("plant:")
                                                          : QStringLiteral("genotype:")) +
                       text(id->text());
            }
        }
    }
    return std::nullopt;
}

QString kindWord(Kind kind) {
    switch (kind) {
    case Kind::observation:
        return Words::tr("note");
    case Kind::score:
        return Words::tr("tasting");
    case Kind::decision:
        return Words::tr("decision");
    case Kind::alias:
        return Words::tr("alias");
    case Kind::photo:
        return Words::tr("photo");
    case Kind::report:
        return Words::tr("report");
    default:
        return Words::tr("record");
    }
}

void addByWords(const OpenBook& book, const std::string& typed, std::set<QString>& shown,
                std::vector<FoundThing>& found) {
    const auto words = book.store().findWords(typed, 4 * kMostWords);
    if (!words) {
        return;
    }
    const auto view = book.view();
    std::size_t added = 0;
    for (const Found& one : *words) {
        const auto owner = ownerOf(book, one);
        if (!owner || added == kMostWords) {
            continue;
        }
        const bool isTree = one.kind == Kind::genotype || one.kind == Kind::plant;
        if (isTree && !shown.insert(*owner).second) {
            continue;
        }
        FoundThing thing;
        const FoundTarget target = foundTarget(book, *owner);
        if (target.plant) {
            thing = treeFound(*view, *target.plant);
        } else if (target.genotype) {
            thing = genotypeFound(*view, *target.genotype);
        } else {
            continue;
        }
        if (!isTree) {
            thing.detail = shortened(text(one.text));
            thing.kind = kindWord(one.kind);
            thing.icon = IconName::note;
        }
        found.push_back(std::move(thing));
        ++added;
    }
}

} // namespace

std::vector<FoundThing> foundIn(const OpenBook& book, const QString& typedText) {
    std::vector<FoundThing> found;
    const std::string typed = typedText.trimmed().toStdString();
    if (typed.empty()) {
        return found;
    }
    const auto view = book.view();
    addByPlace(*view, typed, found);
    std::set<QString> shown;
    for (const Candidate& candidate : genotypesLike(*view, foldedForSearch(typed))) {
        const auto plant = view->plantFor(candidate.genotype);
        FoundThing thing =
            plant ? treeFound(*view, *plant) : genotypeFound(*view, candidate.genotype);
        shown.insert(QStringLiteral("genotype:") +
                     text(view->genotypes()[candidate.genotype].id.uuid.text()));
        shown.insert(thing.id);
        found.push_back(std::move(thing));
    }
    addByWords(book, typed, shown, found);
    std::size_t commands = 0;
    for (const ActionWords& action : allActionWords()) {
        if (commands < kMostCommands &&
            action.title.contains(typedText.trimmed(), Qt::CaseInsensitive)) {
            found.push_back({QStringLiteral("command:") + action.id, action.title, action.keys,
                             Words::tr("command"), IconName::settings});
            ++commands;
        }
    }
    return found;
}

FoundTarget foundTarget(const OpenBook& book, const QString& id) {
    FoundTarget target;
    const auto colon = id.indexOf(QLatin1Char(':'));
    const QString kind = id.left(colon);
    const QString name = id.mid(colon + 1);
    if (kind == QLatin1String("command")) {
        target.command = name;
        return target;
    }
    const auto uuid = Uuid::fromText(name.toStdString());
    if (!uuid) {
        return target;
    }
    if (kind == QLatin1String("plant")) {
        target.plant = book.view()->plant(PlantId(*uuid));
    } else {
        target.genotype = book.view()->genotype(GenotypeId(*uuid));
        if (target.genotype) {
            target.plant = book.view()->plantFor(*target.genotype);
        }
    }
    return target;
}

} // namespace pipwright::ui
