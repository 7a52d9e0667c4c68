#include "sample-data/generator/sample_orchard.h"

#include "sample-data/generator/world.h"

namespace pipwright::sample {

Uuid sampleCopy() {
    return Uuid::named("the orchard of the Vennick valley");
}

Outcome makeOrchard(Store& store) {
    World world(store);
    tellSetting(world);
    tellCrosses(world);
    tellFieldwork(world);
    tellLosses(world);
    tellWalks(world);
    tellSittings(world);
    tellMeetings(world);
    tellGrafting(world);
    tellLetters(world);
    tellEarlyStories(world);
    tellLateStories(world);
    tellSlots(world);
    tellPhotos(world);
    tellWeather(world);
    world.agenda.live(thisMorning(),
                      [&world](Date day, int minute) { world.scribe.wake(day, minute); });
    world.scribe.workedOn(thisMorning());
    return world.scribe.outcome();
}

} // namespace pipwright::sample
