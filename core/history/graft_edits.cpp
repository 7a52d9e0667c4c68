#include "core/history/graft_edits.h"

#include "core/history/named_change.h"
#include "core/units/text.h"

#include <charconv>

namespace pipwright {

namespace {

std::string graftsOf(std::int64_t number, const std::string& code) {
    return std::to_string(number) + (number == 1 ? " graft of " : " grafts of ") + code;
}

/// Takes the number at the start off the text.
std::optional<std::int64_t> numberAtStart(std::string_view& text) {
    text = trimmed(text);
    std::int64_t number = 0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), number);
    if (read.ec != std::errc() || number < 0) {
        return std::nullopt;
    }
    text = trimmed(text.substr(static_cast<std::size_t>(read.ptr - text.data())));
    return number;
}

} // namespace

ChangeSet graftWishChanged(const GraftWish& before, const GraftWish& after, const std::string& code,
                           const EditContext& context) {
    ChangeSet set = named("Graft wish of " + code + " changed", context);
    set.edit(before, after);
    return set;
}

ChangeSet graftsOrdered(const GraftWish& wish, const GraftPlan& plan, const std::string& code,
                        const EditContext& context) {
    ChangeSet set = named("Order " + graftsOf(plan.number, code), context);
    GraftOrder order;
    order.id = GraftOrderId(context.ids->make());
    order.wish = wish.id;
    order.genotype = wish.genotype;
    order.motherPlant = wish.motherPlant;
    order.method = plan.method;
    order.number = plan.number;
    order.ontoPlant = plan.ontoPlant;
    order.ontoWords = plan.ontoWords;
    order.date = plan.date;
    order.season = plan.season;
    order.reason = wish.reason;
    order.person = context.person;
    order.notes = plan.notes;
    set.create(order);
    if (wish.state == WishState::open || wish.state == WishState::unknown) {
        GraftWish after = wish;
        after.state = WishState::ordered;
        set.edit(wish, after);
    }
    return set;
}

Result<GraftCount> readGraftCount(std::string_view typed, std::int64_t ordered) {
    std::string_view rest = typed;
    const auto alive = numberAtStart(rest);
    if (!alive) {
        return Problem{ProblemCode::badInput,
                       "\"" + std::string(trimmed(typed)) + "\" does not begin with a number.",
                       "Type how many are alive, and words on the others behind it: 3 frost.",
                       {}};
    }
    if (rest.substr(0, 3) == "of ") {
        std::string_view behind = rest.substr(3);
        if (numberAtStart(behind)) {
            rest = behind;
        }
    }
    if (*alive > ordered) {
        return Problem{ProblemCode::badInput,
                       "Only " + std::to_string(ordered) + " were grafted.",
                       "Type how many of them are alive, 0 to " + std::to_string(ordered) + ".",
                       {}};
    }
    return GraftCount{*alive, std::string(rest)};
}

ChangeSet graftsChecked(const GraftOrder& order, const std::optional<GraftCheck>& before,
                        GraftCheckpoint checkpoint, const GraftCount& count,
                        const std::string& code, const EditContext& context) {
    ChangeSet set = named(
        "Alive: " + std::to_string(count.alive) + " of " + graftsOf(order.number, code), context);
    if (before) {
        GraftCheck after = *before;
        after.alive = count.alive;
        after.cause = count.cause;
        set.edit(*before, after);
        return set;
    }
    GraftCheck check;
    check.id = GraftCheckId(context.ids->make());
    check.order = order.id;
    check.checkpoint = checkpoint;
    check.date = context.day;
    check.alive = count.alive;
    check.cause = count.cause;
    set.create(check);
    return set;
}

} // namespace pipwright
