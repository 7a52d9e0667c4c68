#include "ui/rows/map_words.h"

#include <QCoreApplication>
#include <QLocale>

namespace pipwright::ui {

namespace {

struct MapWords {
    Q_DECLARE_TR_FUNCTIONS(pipwright::ui::MapWords)
};

QString rowName(const MapScene& scene, std::uint32_t row) {
    return QString::fromStdString(scene.rows()[row].name);
}

} // namespace

QString codeOf(const MapScene& scene, CellIndex cell) {
    const std::string_view code = scene.text(scene.cells()[cell].code);
    return QString::fromUtf8(code.data(), static_cast<qsizetype>(code.size()));
}

QString placeWords(const MapScene& scene, CellIndex cell) {
    return MapWords::tr("row %1, place %2")
        .arg(rowName(scene, scene.rowOf(cell)))
        .arg(scene.cells()[cell].ordinal);
}

QString cellWords(const MapScene& scene, CellIndex cell) {
    const MapCell& facts = scene.cells()[cell];
    QStringList words{placeWords(scene, cell)};
    if (facts.isGap()) {
        words << MapWords::tr("gap");
        return words.join(QStringLiteral(", "));
    }
    words << codeOf(scene, cell) << stageWord(facts.stage);
    if (facts.state != PlantState::growing) {
        words << stateWord(facts.state);
    }
    if (facts.identity != Confidence::sure) {
        words << identityWord(facts.identity);
    }
    words << markWords(facts);
    return words.join(QStringLiteral(", "));
}

QString tapeWords(const MapCell& cell) {
    if (!cell.tapeMetres) {
        return {};
    }
    return MapWords::tr("%1 m from the zero stake")
        .arg(QLocale().toString(static_cast<double>(*cell.tapeMetres), 'f', 2));
}

QStringList markWords(const MapCell& cell) {
    QStringList words;
    if (cell.has(CellMark::noteToday)) {
        words << MapWords::tr("note today");
    }
    if (cell.has(CellMark::graftWish)) {
        words << MapWords::tr("graft wish");
    }
    if (cell.has(CellMark::photo)) {
        words << MapWords::tr("photo");
    }
    if (cell.has(CellMark::earlierPlants)) {
        words << MapWords::tr("earlier plants here");
    }
    if (cell.has(CellMark::secondPlant)) {
        words << MapWords::tr("two plants at this place");
    }
    return words;
}

std::optional<CellIndex> findTyped(const MapScene& scene, const QString& typed) {
    const QString wanted = typed.trimmed();
    if (wanted.isEmpty()) {
        return std::nullopt;
    }
    const qsizetype slash = wanted.lastIndexOf(QLatin1Char('/'));
    const std::string rowWanted = wanted.left(slash).trimmed().toStdString();
    bool isNumber = false;
    const int place = wanted.mid(slash + 1).trimmed().toInt(&isNumber);
    if (slash > 0 && isNumber) {
        for (const MapRow& row : scene.rows()) {
            const auto cells = scene.cellsOf(row);
            for (std::size_t i = 0; row.name == rowWanted && i < cells.size(); ++i) {
                if (cells[i].ordinal == place) {
                    return row.firstCell + static_cast<CellIndex>(i);
                }
            }
        }
    }
    const std::string exact = wanted.toCaseFolded().toStdString();
    std::optional<CellIndex> partly;
    for (CellIndex cell = 0; cell < scene.cells().size(); ++cell) {
        const MapCell& facts = scene.cells()[cell];
        const std::string_view folded = scene.text(facts.folded);
        if (facts.isGap()) {
            continue;
        }
        if (folded == exact || scene.text(facts.shortCode) == exact) {
            return cell;
        }
        if (!partly && folded.find(exact) != std::string_view::npos) {
            partly = cell;
        }
    }
    return partly;
}

} // namespace pipwright::ui
