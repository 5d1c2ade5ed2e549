using System.Collections.Generic;
using Recovery.Mechanics.Rigging;

namespace Recovery.Mechanics.Uncertainty;

/// <summary>What is counted at one place of a rig.</summary>
internal sealed class PlaceTallies
{
    public long OverRated { get; private set; }

    public long BelowFloor { get; private set; }

    public long Parted { get; private set; }

    public Tally Rated { get; } = new(1);

    public Tally Peak { get; } = new(1);

    public void Add(in RigPlace place, in RigOutcome outcome, bool parted)
    {
        // A bight whose strength is from memory has its own level; no rating is asked of it.
        var rated = place.Kind != PlaceKind.Bight && !double.IsNaN(outcome.RatedUtilisation);
        if (rated && outcome.RatedUtilisation > 1) OverRated++;
        if (outcome.Reserve < place.Floor) BelowFloor++;
        if (parted) Parted++;
        if (rated) Rated.Add(outcome.RatedUtilisation);
        if (!double.IsNaN(outcome.Reserve)) Peak.Add(place.Floor / outcome.Reserve);
    }

    public void Add(PlaceTallies other)
    {
        OverRated += other.OverRated;
        BelowFloor += other.BelowFloor;
        Parted += other.Parted;
        Rated.Add(other.Rated);
        Peak.Add(other.Peak);
    }

    public void Write(List<byte> bytes)
    {
        Tally.Put(bytes, OverRated);
        Tally.Put(bytes, BelowFloor);
        Tally.Put(bytes, Parted);
        Rated.Write(bytes);
        Peak.Write(bytes);
    }
}
