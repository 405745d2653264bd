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
            .. rig.Loads.Items.Where(static load => load is { Feeds.Count: > 0, IsFedSupply: false, Rating.Plug.IsAssumed: true }).Select(static load => load.Id),
            .. rig.Outlets.Items.Where(static outlet => outlet is { Feeds.Count: > 0, Rating.Plug.IsAssumed: true }).Select(static outlet => outlet.Name),
        ];
        if (names.Count > 0)
            yield return new QuestionDraft(names, IsOfEach: true, Ask);
    }

    private static OpenQuestion Ask(ValueList<string> some) => new(
        QuestionTopic.Plug,
        some,
        "plug",
        some is [var only] ? $"Which plug does {only} take?" : $"Has any of these another plug than {Plug.Common}: {Phrases.List(some)}?",
        [
            Answer(some, some.Count == 1 ? Plug.Common.Name : $"none: all {Plug.Common}", Plug.Common),
            .. some.Items.Select(name => Answer([name], some.Count == 1 ? Plug.WidePin.Name : $"{name}: {Plug.WidePin}", Plug.WidePin)),
        ]);

    private static PossibleAnswer Answer(ValueList<string> names, string words, Plug plug) => new(
        words,
        string.Join(", ", names.Items.Select(name => $"{name}: {{ plug: {plug} }}")),
        rig => rig.WithLoads(names, load => load with { Plug = plug }).WithOutlets(names, outlet => outlet with { Plug = plug }));
}
