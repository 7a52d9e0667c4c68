#include "app/figure_table.h"

#include "app/terminal.h"
#include "core/exchange/csv_writer.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>
#include <cmath>

namespace pipwright::app {

namespace {

bool isNumber(const QVariant& cell) {
    return cell.typeId() == QMetaType::Double || cell.typeId() == QMetaType::Int;
}

} // namespace

QString FigureTable::textOf(const QVariant& cell, const Column& column, Form form) const {
    if (!cell.isValid()) {
        return form == Form::text ? QStringLiteral("-") : QString();
    }
    if (cell.typeId() == QMetaType::Double) {
        // A spreadsheet gets more digits than a reader wants to see.
        return QString::number(cell.toDouble(), 'f', column.decimals + (form == Form::csv ? 3 : 0));
    }
    return cell.toString();
}

void FigureTable::print(Form form) const {
    switch (form) {
    case Form::text:
        printText();
        break;
    case Form::csv:
        printCsv();
        break;
    case Form::json:
        printJson();
        break;
    }
}

void FigureTable::printText() const {
    std::vector<int> widths;
    for (std::size_t i = 0; i < m_columns.size(); ++i) {
        auto width = m_columns[i].heading.size();
        for (const auto& cells : m_rows) {
            width = std::max(width, textOf(cells[i], m_columns[i], Form::text).size());
        }
        widths.push_back(static_cast<int>(width));
    }
    QString line;
    for (std::size_t i = 0; i < m_columns.size(); ++i) {
        const bool numbers = !m_rows.empty() && isNumber(m_rows.front()[i]);
        line += numbers ? m_columns[i].heading.rightJustified(widths[i])
                        : m_columns[i].heading.leftJustified(widths[i]);
        line += QStringLiteral("  ");
    }
    say(line.trimmed());
    for (const auto& cells : m_rows) {
        line.clear();
        for (std::size_t i = 0; i < m_columns.size(); ++i) {
            const QString text = textOf(cells[i], m_columns[i], Form::text);
            const bool right = isNumber(cells[i]) || !cells[i].isValid();
            line += right ? text.rightJustified(widths[i]) : text.leftJustified(widths[i]);
            line += QStringLiteral("  ");
        }
        while (line.endsWith(QLatin1Char(' '))) {
            line.chop(1);
        }
        say(line);
    }
    if (!m_notes.empty()) {
        say({});
    }
    for (const QString& note : m_notes) {
        say(note);
    }
}

void FigureTable::printCsv() const {
    std::string text;
    CsvWriter csv(text);
    for (const Column& column : m_columns) {
        csv.cell(column.key.toStdString());
    }
    csv.endRecord();
    for (const auto& cells : m_rows) {
        for (std::size_t i = 0; i < m_columns.size(); ++i) {
            csv.cell(guardedCell(textOf(cells[i], m_columns[i], Form::csv).toStdString()));
        }
        csv.endRecord();
    }
    QString all = QString::fromStdString(text);
    if (all.endsWith(QLatin1String("\r\n"))) {
        all.chop(2); // say() ends the line
    }
    say(all);
}

void FigureTable::printJson() const {
    QJsonArray rows;
    for (const auto& cells : m_rows) {
        QJsonObject row;
        for (std::size_t i = 0; i < m_columns.size(); ++i) {
            const bool lost =
                cells[i].typeId() == QMetaType::Double && !std::isfinite(cells[i].toDouble());
            row.insert(m_columns[i].key, !cells[i].isValid() || lost
                                             ? QJsonValue()
                                             : QJsonValue::fromVariant(cells[i]));
        }
        rows.append(row);
    }
    QJsonArray notes;
    for (const QString& note : m_notes) {
        notes.append(note);
    }
    const QJsonObject all{{QStringLiteral("rows"), rows}, {QStringLiteral("notes"), notes}};
    say(QString::fromUtf8(QJsonDocument(all).toJson()).trimmed());
}

} // namespace pipwright::app
