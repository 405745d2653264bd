namespace Loadmark.Core.Nameplates.Parsing;

/// <content>What outlets say alike is said of the label.</content>
internal ref partial struct LabelParser
{
    /// <summary>Moves what the outlets say alike to the label.</summary>
    private void Lift(List<PrintedOutletGroup> outlets)
    {
        // Direct current said once is said of all, as long as nothing says otherwise; alternating current is the exception.
        if (outlets.Count == 1 || outlets.TrueForAll(group => !group.Forms.Alternating)
            || outlets.TrueForAll(group => group.Forms is { Alternating: true, Direct: false }))
        {
            foreach (var group in outlets)
            {
                _forms.Add(group.Forms);
                group.Forms = default;
            }
        }

        // A polarity said of the last outlets alone may be said of all of them. The usual one is taken so; the other is a question.
        var last = outlets[^1];
        var lastOnly = outlets.Count > 1 && _polarity.IsEmpty && outlets.TrueForAll(group => group == last || group.Polarity.IsEmpty);
        if (lastOnly && last.Polarity.Positive)
            _polarity.Add(negative: true, positive: true, last.Polarity.Place);
        else if (lastOnly
            || outlets.TrueForAll(
                group => (group.Polarity.Negative, group.Polarity.Positive) == (last.Polarity.Negative, last.Polarity.Positive)))
            LiftPolarity(outlets);

        if (outlets.TrueForAll(
            group => (group.Isolation.Isolated, group.Isolation.Common) == (last.Isolation.Isolated, last.Isolation.Common)))
            LiftIsolation(outlets);

        // What the label says anyway needs no saying of some; but where some are direct and some alternating, each that says so goes on
        // saying it, since without it the direct ones alone would seem to speak for all.
        var areMixed = outlets.Exists(static group => group.Forms is { Direct: true, Alternating: false })
            && outlets.Exists(static group => group.Forms is { Alternating: true, Direct: false });
        foreach (var group in outlets)
        {
            if (!areMixed && Says(group.Forms.Field, _forms.Field))
                group.Forms = default;
            if (Says(group.Polarity.Field, _polarity.Field))
                group.Polarity = default;
            if (Says(group.Isolation.Field, _isolation.Field))
                group.Isolation = default;
        }
    }

    private static bool Says<T>(Field<T> group, Field<T> label)
        where T : struct => group.State == label.State && Equals(group.Value, label.Value);

    private void LiftAll(PrintedOutletGroup group)
    {
        _forms.Add(group.Forms);
        LiftPolarity([group]);
        LiftIsolation([group]);
    }

    private void LiftPolarity(List<PrintedOutletGroup> outlets)
    {
        foreach (var group in outlets)
        {
            if (!group.Polarity.IsEmpty)
                _polarity.Add(group.Polarity.Negative, group.Polarity.Positive, group.Polarity.Place);
            group.Polarity = default;
        }
    }

    private void LiftIsolation(List<PrintedOutletGroup> outlets)
    {
        foreach (var group in outlets)
        {
            if (group.Isolation.Isolated)
                _isolation.Add(isolated: true, group.Isolation.Place);
            if (group.Isolation.Common)
                _isolation.Add(isolated: false, group.Isolation.Place);
            group.Isolation = default;
        }
    }
}
