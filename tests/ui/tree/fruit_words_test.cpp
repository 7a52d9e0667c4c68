#include "core/orchard/fruit_traits.h"
#include "tests/ui/tree/sheet_on_orchard.h"
#include "ui/tree/fruit_words.h"
#include "ui/tree/observation_form.h"
#include "ui/tree/record_list.h"
#include "ui/widgets/flow_text.h"

#include <QLineEdit>

namespace pipwright::ui {
namespace {

class MeasuredFruit : public SheetOnOrchard {
  protected:
    ObservationForm* form() { return m_sheet->strip()->findChild<ObservationForm*>(); }
    void choose(const char* trait) {
        m_sheet->begin(EntryKind::observation);
        type(trait);
        press(Qt::Key_Return);
    }
    void measure(const char* trait, const char* value, const char* instrument = nullptr) {
        choose(trait);
        type(value);
        if (instrument != nullptr) {
            form()->instrumentLine()->setText(QString::fromUtf8(instrument));
        }
        press(Qt::Key_Return);
    }
    /// Everything the list of what was seen says, as one text.
    QString told() {
        QStringList all;
        for (const RecordWords& record : m_sheet->seen()->records()) {
            all << record.heading << record.quiet << record.lines;
        }
        return all.join(QLatin1Char('\n')).replace(QChar(0x00A0), QLatin1Char(' '));
    }
};

TEST_F(MeasuredFruit, TellsTheRatioWithWhatItIsMadeOf) {
    measure("soluble", "12.6");
    EXPECT_FALSE(told().contains(QStringLiteral("Sugar to acid")));
    measure("titrat", "0.5 %");
    EXPECT_TRUE(told().contains(QStringLiteral("Sugar to acid 25.2, from 12.6 °Brix and 5.0 g/L")))
        << told().toStdString();
}

TEST_F(MeasuredFruit, TellsTheStreifIndexInBothConventions) {
    measure("soluble", "12");
    measure("firmness", "7.5", "11 mm");
    measure("starch, 1 to 10", "3");
    EXPECT_TRUE(told().contains(QStringLiteral("Streif index 0.208 by kgf, 2.04 by N")))
        << told().toStdString();
    EXPECT_TRUE(told().contains(QStringLiteral("with 11 mm")));
}

TEST_F(MeasuredFruit, WantsTheProbeNamedForTheStreifIndex) {
    measure("soluble", "12");
    measure("firmness", "16 lbf");
    measure("starch, 1 to 10", "3");
    EXPECT_TRUE(told().contains(QStringLiteral("No Streif index"))) << told().toStdString();
}

TEST_F(MeasuredFruit, BringsSolidsToTwentyDegrees) {
    measure("soluble", "12", "15 C");
    EXPECT_EQ(seen(trait_key::kSolubleSolids).at(0).instrument, "15 C");
    EXPECT_EQ(seen(trait_key::kSolubleSolids).at(0).value, 12.0) << "the reading stays as it was";
    EXPECT_TRUE(told().contains(QStringLiteral("11.7 °Brix at 20 °C"))) << told().toStdString();
}

TEST_F(MeasuredFruit, AsksForTheInstrumentOnlyWhereThereIsOne) {
    choose("firmness");
    EXPECT_TRUE(form()->instrumentLine()->isVisible());
    form()->instrumentLine()->setText(QStringLiteral("11 mm"));
    type("7");
    press(Qt::Key_Return);
    choose("firmness");
    EXPECT_EQ(form()->instrumentLine()->text(), QStringLiteral("11 mm")) << "the probe stays on";
    form()->traitLine()->setFocus();
    form()->traitLine()->clear();
    type("soluble");
    press(Qt::Key_Return);
    EXPECT_TRUE(form()->instrumentLine()->isVisible());
    EXPECT_EQ(form()->instrumentLine()->text(), QString()) << "but it is no refractometer";
}

TEST_F(MeasuredFruit, CautionsWhereIodineAndAlkaliAreUsed) {
    choose("starch, 1 to 8");
    EXPECT_TRUE(form()->caution()->isVisible());
    EXPECT_TRUE(form()->caution()->text().contains(QStringLiteral("compost")));
    press(Qt::Key_Escape);
    EXPECT_TRUE(measuringCaution(trait_key::kAcidity).contains(QStringLiteral("goggles")));
    EXPECT_TRUE(measuringCaution(trait_key::kStarchTen).contains(QStringLiteral("poisonous")));
    EXPECT_TRUE(measuringCaution(trait_key::kSolubleSolids).isEmpty());
}

} // namespace
} // namespace pipwright::ui
