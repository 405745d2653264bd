
namespace Loadmark.Core.Nameplates.Reading;

/// <summary>Decides which figures belong together and what is mains and what is low voltage.</summary>
internal sealed class Grouper(TokenList tokens)
{
    /// <summary>
    /// Voltages from here up are mains. Between the highest low voltage of the trade (48 V) and the lowest nominal mains
    /// (100 V, IEC 60038) nothing is printed on either.
    /// </summary>
    private const decimal LeastMains = 80;

    private readonly List<ModeGroup> _groups = new(4);
    private readonly List<Item> _waiting = [];
    private ModeGroup? _current;
    private bool _inInput;

    /// <summary>The groups in the order printed.</summary>
    public List<ModeGroup> Groups => _groups;

    /// <summary>Whether direct current is said of the low voltage, and where.</summary>
    public Place? Direct { get; private set; }

    /// <summary>Whether alternating current is said of the low voltage, and where.</summary>
    public Place? Alternating { get; private set; }

    /// <summary>Currents that contradict one another or make no sense.</summary>
    public Field<Amps> OddAmps { get; private set; }

    /// <summary>Voltages that can be taken in several ways or make no sense.</summary>
    public Field<Volts> OddVolts { get; private set; }

    /// <summary>Powers that contradict one another or make no sense.</summary>
    public Field<Watts> OddWatts { get; private set; }

    /// <summary>Groups the items of a label.</summary>
    public void Run(List<Item> items)
    {
        for (var index = 0; index < items.Count; index++)
            Add(items, index);

        foreach (var item in _waiting)
        {
            if (item.Kind is ItemKind.Direct or ItemKind.Alternating)
                AddForm(item, _current ?? LastLow());
            else
                Attach(Target(item), item);
        }
    }

    private void Add(List<Item> items, int index)
    {
        var item = items[index];
        switch (item.Kind)
        {
            case ItemKind.Input or ItemKind.Output:
                _inInput = item.Kind == ItemKind.Input;
                if (_current is not { IsMains: false } || !_inInput || ComesVolts(items, index + 1))
                    Close();
                break;
            case ItemKind.Break:
                Close();
                break;
            case ItemKind.Volts:
                AddVolts(item);
                break;
            case ItemKind.Direct or ItemKind.Alternating:
                if ((!IsAfterFigure(items, index) || IsOfNext(items, index)) && ComesVolts(items, index + 1))
                    _waiting.Add(item);
                else
                    AddForm(item, _current);
                break;
            default:
                if (_current is null || IsAtNext(items, index) || (IsTakenAlready(_current, item) && ComesVolts(items, index + 1) && !item.IsQualified))
                    _waiting.Add(item);
                else
                    Attach(_current, item);
                break;
        }
    }

    private void Close()
    {
        if (_current is not null && !(_waiting.Count > 0 && _groups.Count == 0))
            _current = null;
        _current = null;
    }

    private void AddVolts(Item item)
    {
        if (!IsSensible(item, Volt.Largest))
        {
            OddVolts = Field<Volts>.Unreadable(item.Place);
            Release(item);
            return;
        }

        if (item.OtherValue is { } other)
        {
            OddVolts = Field<Volts>.Ambiguous([new Volts(item.Values[0]), new Volts(other)], item.Place);
            return;
        }

        var group = Unfilled(item);
        if (group is null)
            _groups.Add(group = new ModeGroup { Volts = item, IsMains = item.Values.Max() >= LeastMains });
        _current = group;

        // What was said before the voltage ("DC 9V", "1.8 W 9 V") waited for it.
        foreach (var waiting in _waiting)
        {
            if (waiting.Kind is ItemKind.Direct or ItemKind.Alternating)
                AddForm(waiting, group);
            else
                Attach(group, waiting);
        }

        _waiting.Clear();
    }

    /// <summary>The same voltage printed before without a current: "9V battery or 9V DC 12 mA", "9 or 18 V, 25 mA at 9 V".</summary>
    private ModeGroup? Unfilled(Item item) => _groups.Find(group =>
        group is { Amps: null, Watts: null, Volts: { } volts } && volts.IsRange == item.IsRange && volts.Values.AsSpan().SequenceEqual(item.Values));

    /// <summary>"DC" before "OUT 9V", or after mains, which is never direct, belongs to the voltage to come.</summary>
    private bool IsOfNext(List<Item> items, int index) =>
        (index + 1 < items.Count && items[index + 1].Kind is ItemKind.Input or ItemKind.Output)
        || (items[index].Kind == ItemKind.Direct && _current is { IsMains: true });

    /// <summary>"25mA@9V": the current stands before its voltage.</summary>
    private bool IsAtNext(List<Item> items, int index) =>
        items[index].Kind == ItemKind.Amps && index + 1 < items.Count && items[index + 1].Kind == ItemKind.Volts
        && items[index + 1].Tokens.From == items[index].Tokens.To + 1 && tokens[items[index].Tokens.To] is { IsAt: true };

    private void AddForm(Item item, ModeGroup? group)
    {
        if (group is { IsMains: true })
            return;
        if (item.Kind == ItemKind.Direct)
            Direct ??= item.Place;
        else
            Alternating ??= item.Place;
    }

    /// <summary>A figure for which no voltage came: the last low voltage's that lacks it, else one without voltage.</summary>
    private ModeGroup Target(Item item)
    {
        for (var index = _groups.Count - 1; index >= 0; index--)
        {
            if (!IsTakenAlready(_groups[index], item) && (!_groups[index].IsMains || _inInput || item.Kind == ItemKind.Hertz))
                return _groups[index];
        }

        var group = new ModeGroup { IsMains = item.Kind == ItemKind.Hertz };
        _groups.Add(group);
        return group;
    }

    private ModeGroup? LastLow() => _groups.LastOrDefault(group => !group.IsMains);

    private static bool IsTakenAlready(ModeGroup group, Item item) => item.Kind switch
    {
        ItemKind.Amps => group.Amps is not null,
        ItemKind.Watts => group.Watts is not null,
        _ => group.Hertz is not null,
    };

    private void Attach(ModeGroup group, Item item)
    {
        switch (item.Kind)
        {
            case ItemKind.Amps:
                AttachAmps(group, item);
                break;
            case ItemKind.Watts:
                AttachWatts(group, item);
                break;
            default:
                group.Hertz ??= item;
                break;
        }
    }

    private void AttachAmps(ModeGroup group, Item item)
    {
        if (item.Values.Max() > Ampere.Largest)
        {
            OddAmps = Field<Amps>.Unreadable(item.Place);
            Release(item);
        }
        else if (item.OtherValue is { } other)
        {
            OddAmps = Field<Amps>.Ambiguous([new Amps(item.Values[0]), new Amps(other)], item.Place);
        }
        else if (group.Amps is not { } first)
        {
            if (!item.IsRange && item.Values.Length > 1 && item.Values.Length != group.Count)
                OddAmps = Field<Amps>.Ambiguous([.. item.Values.Select(value => new Amps(value))], item.Place);
            else
                group.Amps = item;
        }
        else if (first.IsQualified || item.IsQualified)
        {
            group.OtherAmps = item;
        }
        else if (!first.Values.AsSpan().SequenceEqual(item.Values))
        {
            OddAmps = Field<Amps>.Ambiguous([new Amps(first.Values[^1]), new Amps(item.Values[^1])], first.Place.Union(item.Place));
            group.Amps = null;
        }
    }

    private void AttachWatts(ModeGroup group, Item item)
    {
        if (!IsSensible(item, Watt.Largest))
        {
            OddWatts = Field<Watts>.Unreadable(item.Place);
            Release(item);
        }
        else if (item.OtherValue is { } other)
        {
            OddWatts = Field<Watts>.Ambiguous([new Watts(item.Values[0]), new Watts(other)], item.Place);
        }
        else if (group.Watts is null && !IsTotal(group, item))
        {
            group.Watts = item;
        }
        else if (group.Watts is { } first && !first.Values.AsSpan().SequenceEqual(item.Values))
        {
            OddWatts = Field<Watts>.Ambiguous([new Watts(first.Values[^1]), new Watts(item.Values[^1])], first.Place.Union(item.Place));
            group.Watts = null;
        }
        else if (group.Watts is null)
        {
            Release(item);
        }
    }

    /// <summary>
    /// One power after several settings that each have their current is what they come to together, not the last one's;
    /// unless it is just the last one's volts times amps.
    /// </summary>
    private bool IsTotal(ModeGroup group, Item item)
    {
        if (group.IsMains || group.Amps is not { Values: [.., var amps] } || group.Volts is not { Values: [.., var volts] })
            return false;
        if (_groups.Count(other => !other.IsMains) + group.Count < 3)
            return false;
        return Math.Abs(item.Values[0] - (volts * amps)) > 0.10m * volts * amps;
    }

    private static bool IsSensible(Item item, decimal largest) => item.Values.Min() > 0 && item.Values.Max() <= largest;

    /// <summary>Gives a figure back as not understood.</summary>
    private void Release(Item item)
    {
        for (var index = item.Tokens.From; index < item.Tokens.To; index++)
            tokens[index].IsTaken = false;
    }

    private static bool IsAfterFigure(List<Item> items, int index) => index > 0 && items[index - 1].Kind is ItemKind.Volts
        or ItemKind.Amps or ItemKind.Watts or ItemKind.Hertz or ItemKind.Direct or ItemKind.Alternating && WasFigure(items, index - 1);

    private static bool WasFigure(List<Item> items, int index)
    {
        while (index >= 0 && items[index].Kind is ItemKind.Direct or ItemKind.Alternating)
            index--;
        return index >= 0 && items[index].Kind is ItemKind.Volts or ItemKind.Amps or ItemKind.Watts or ItemKind.Hertz;
    }

    private static bool ComesVolts(List<Item> items, int index)
    {
        for (; index < items.Count && items[index].Kind != ItemKind.Break; index++)
        {
            if (items[index].Kind == ItemKind.Volts)
                return true;
        }

        return false;
    }
}
