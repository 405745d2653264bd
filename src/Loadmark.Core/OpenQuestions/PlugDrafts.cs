using Loadmark.Core.Checks;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;

namespace Loadmark.Core.OpenQuestions;

/// <summary>What could be asked about the sizes of plugs: one question for the whole rig.</summary>
internal static class PlugDrafts
{
    /// <summary>The draft, where a size is not known or was taken for granted.</summary>
    /// <param name="rig">The rig.</param>
    public static IEnumerable<QuestionDraft> Of(WiredRig rig)
    {
        ValueList<string> names =
        [
            .. rig.Loads.Items.Where(static load => load is { Feeds.Count: > 0, IsFedSupply: false, Rating.Plug.IsAssumed: true })
                .Select(static load => load.Id),
            .. rig.Outlets.Items.Where(static outlet => outlet is { Feeds.Count: > 0, Rating.Plug.IsAssumed: true })
                .Select(static outlet => outlet.Name),
        ];
        if (names.Count > 0)
            yield return QuestionDraft.OfEach(
                QuestionTopic.Plug,
                "plug",
                names,
                static some => some is [var only]
                    ? $"Which plug does {only} take?"
                    : $"Has any of these another plug than {Plug.Common}: {Phrases.List(some)}?",
                ($"none: all {Plug.Common}", Plug.Common.Name, Plug.WidePin.Name),
                static (name, isUsual) => $"{name}: {{ plug: {(isUsual ? Plug.Common : Plug.WidePin)} }}",
                static (to, some, isUsual) =>
                {
                    var plug = isUsual ? Plug.Common : Plug.WidePin;
                    return to.WithLoads(some, load => load with { Plug = plug }).WithOutlets(some, outlet => outlet with { Plug = plug });
                });
    }
}
