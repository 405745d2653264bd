using Loadmark.Core.Gear;

namespace Loadmark.Core.Nameplates.Parsing;

/// <summary>Puts the phrases of one label together and marks the tokens that were understood.</summary>
internal ref partial struct LabelParser
{
    /// <summary>How far to look for a neighbour that gives a word its meaning; keeps reading linear.</summary>
    private const int Reach = 8;

    private readonly Span<Token> _tokens;
    private readonly ReadOnlySpan<Phrase> _phrases;
    private readonly string _text;
    private readonly FigureCollector _figures = new();
    private FormMarks _waitingForms;
    private FormMarks _forms;
    private FormMarks _inputForms;
    private RegulationMarks _regulation;
    /// <summary>
    /// Where the name of the output before stands, the word straight before it; −1 when it has none, null before the first.
    /// </summary>
    private int? _outputName;

    private Negation _negation;
    private List<(Phrase Phrase, int Word)>? _aside;
    private PrintedFigure? _totalAmps;
    private PrintedFigure? _totalWatts;
    private PolarityMarks _polarity;
    private PolarityMarks _inputPolarity;
    private IsolationMarks _isolation;
    private GroundMarks _ground;

    /// <summary>Whether the label says "each".</summary>
    private bool _each;

    /// <summary>Whether the words for input and output stand after their figures.</summary>
    private bool _sidesFollow;

    /// <summary>Whether a line or a sentence has ended since the last figure: what follows is of the whole label.</summary>
    private bool _setOff;
    private Field<Plug> _plug;
    private Field<Volts> _oddVolts;
    private Field<Amps> _oddAmps;
    private Field<Watts> _oddWatts;

    /// <summary>Prepares to put phrases together.</summary>
    /// <param name="text">The label as given.</param>
    /// <param name="tokens">Its tokens.</param>
    /// <param name="phrases">Its phrases, which cover every token once.</param>
    public LabelParser(string text, Span<Token> tokens, ReadOnlySpan<Phrase> phrases)
    {
        _text = text;
        _tokens = tokens;
        _phrases = phrases;
    }

    /// <summary>Reads every phrase.</summary>
    /// <param name="rest">What of the label lies beyond the tokens; null when nothing does.</param>
    public Nameplate Read(Place? rest)
    {
        _sidesFollow = SidesFollow();
        for (var i = 0; i < _phrases.Length; i++)
        {
            if (_negation.Takes(_phrases, i, _tokens, _text))
                Deny(_phrases[i]);
            else
                ReadPhrase(i);
        }

        ReadAside();
        _figures.Finish();
        ResolveInput();
        _forms.Add(_waitingForms);

        var derived = new DerivedFigures();
        var outlets = Outlets(ref derived);

        // Beside a mains input alone there is no low voltage for a form to be of.
        if (_figures.Mains != null && _figures.Groups.Count == 0)
            _forms = default;
        if (_figures.HertzOfMode is { } hertz && _forms.IsEmpty && outlets.IsEmpty)
            _forms.Add(direct: false, hertz);
        var amps = Resolve(Doubtful(_oddAmps, _figures.DoubtfulAmps), _figures.DisputedAmps);
        var watts = Resolve(Doubtful(_oddWatts, _figures.DoubtfulWatts), _figures.DisputedWatts);
        var volts = Doubtful(_oddVolts, _figures.DoubtfulVolts);
        foreach (var place in _figures.Rejected)
            Reject(place);

        var input = LowVoltageInput();
        var holdsCharge = input is not null && ChargeWords.Mark(_tokens, _text);
        var modes = outlets.IsEmpty ? derived.Modes(_figures.Groups, _forms.Field) : [];
        return new Nameplate(_text)
        {
            Form = _forms.Field,
            Modes = modes,
            Outlets = outlets,
            EachOutlet = _each && !modes.IsEmpty,
            Total = _totalAmps != null || _totalWatts != null
                ? new SupplyTotal(_totalAmps is { } all ? new Amps(all.High) : null, _totalWatts is { } sum ? new Watts(sum.High) : null)
                : null,
            Derived = derived.Keys,
            Conflicts = derived.Conflicts,
            AmbiguousVolts = volts,
            AmbiguousAmps = amps,
            AmbiguousWatts = watts,
            Polarity = _polarity.Field,
            Plug = _plug,
            Regulated = _regulation.Field,
            NoLoad = NoLoad(),
            Ground = _ground.Field,
            Isolated = _isolation.Field,
            NotUnderstood = NotUnderstood(rest),
            Mains = MainsInput(),
            Input = input,
            HoldsCharge = holdsCharge,
            PrintsVoltAmps = PrintsVoltAmps(),
            Unread = UnreadPieces.Of(_text, _tokens, rest),
        };
    }

    private readonly MainsInput? MainsInput() => _figures.Mains is { IsEmpty: false } mains
        ? new MainsInput(
            mains.Volts?.As<Volt>(),
            mains.Hertz?.As<Hertz>(),
            mains.Amps is { } current ? new Amps(current.High) : null,
            mains.Watts is { } power ? new Watts(power.High) : null,
            mains.Place)
        {
            Choices = _figures.MainsChoices,
            VoltAmps = mains.VoltAmps is { } apparent ? new VoltAmps(apparent.High) : null,
        }
        : null;

    /// <summary>The highest of the voltages that are printed for nothing drawn; null where none is.</summary>
    private readonly Volts? NoLoad()
    {
        Volts? highest = null;
        for (var i = 0; i + 1 < _tokens.Length; i++)
        {
            if (_tokens[i].IsUnloaded && !(highest?.Value > _tokens[i].Value * _tokens[i + 1].Value))
                highest = new Volts(_tokens[i].Value * _tokens[i + 1].Value);
        }

        return highest;
    }

    /// <summary>Whether a figure in VA stands anywhere, read or not, unless the label denies it.</summary>
    private readonly bool PrintsVoltAmps()
    {
        for (var i = 1; i < _tokens.Length; i++)
        {
            if (_tokens[i] is { IsApparent: true, Sign: Sign.Watt } && _tokens[i - 1].Sign == Sign.Number)
                return true;
        }

        return false;
    }

    /// <summary>A figure with letters for digits is a candidate, where nothing plainer makes the field ambiguous already.</summary>
    private readonly Field<Quantity<TUnit>> Doubtful<TUnit>(Field<Quantity<TUnit>> odd, PrintedFigure? figure)
        where TUnit : struct, IUnit
    {
        if (figure is not { } printed)
            return odd;
        if (odd.State != FieldState.Ambiguous)
            return Field<Quantity<TUnit>>.Ambiguous([new(printed.High)], printed.Place);
        Reject(printed.Place);
        return odd;
    }

    private readonly void Reject(Place place)
    {
        foreach (ref var token in _tokens)
        {
            if (token.Start >= place.Start && token.End <= place.End)
                token.Understood = false;
        }
    }

    /// <summary>One field for both; when both are spoken of, the second stays unread rather than unsaid.</summary>
    private readonly Field<T> Resolve<T>(Field<T> odd, Field<T> disputed)
        where T : struct
    {
        // What was unreadable is among the unread already.
        if (odd.State == FieldState.Absent || (odd.State == FieldState.Unreadable && disputed.State != FieldState.Absent))
            return disputed;
        if (disputed.State != FieldState.Absent)
            Reject(disputed.Place);
        return odd;
    }
}
