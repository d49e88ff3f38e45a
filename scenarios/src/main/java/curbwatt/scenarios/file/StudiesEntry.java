package curbwatt.scenarios.file;

import java.util.Optional;

/**
 * What studies of the scenario look at; every key has a usual value.
 *
 * @param place where it stands
 * @param settings how the settings of a cutoff are searched
 * @param size what a battery is sized for
 * @param idle by what ways of standing are compared
 * @param odds how uncertain the inputs are, and how many draws are made
 * @param recharge how batteries are recharged after the scene
 */
public record StudiesEntry(
        Place place,
        Optional<SettingsEntry> settings,
        Optional<SizeEntry> size,
        Optional<IdleEntry> idle,
        Optional<OddsEntry> odds,
        Optional<RechargeEntry> recharge) {}
