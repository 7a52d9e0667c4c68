#include "ui/print/misfit_list.h"

#include "ui/print/print_words.h"

namespace pipwright::ui {

MisfitList::MisfitList(QWidget* parent) : QListWidget(parent) {
    setAccessibleName(tr("What does not fit, with the reason"));
    setWordWrap(true);
    setSpacing(2);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    hide();
}

void MisfitList::setMisfits(const std::vector<Misfit>& misfits) {
    clear();
    for (const Misfit& misfit : misfits) {
        addItem(misfitSentence(misfit));
    }
    setVisible(!misfits.empty());
}

} // namespace pipwright::ui
