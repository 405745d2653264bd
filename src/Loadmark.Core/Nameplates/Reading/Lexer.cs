namespace Loadmark.Core.Nameplates.Reading;

/// <summary>
/// Cuts a normalised text into tokens and sorts out which digits are figures at all: a number run together with letters
/// that mean nothing is part of a model number, not a voltage.
/// </summary>
internal ref struct Lexer
{
    private readonly ReadOnlySpan<char> _text;
    private readonly TokenList _tokens;
    private int _at;
    private bool _space = true;

    private Lexer(ReadOnlySpan<char> text, TokenList tokens)
    {
        _text = text;
        _tokens = tokens;
    }

    public static void Cut(ReadOnlySpan<char> text, TokenList tokens)
    {
        var lexer = new Lexer(text, tokens);
        lexer.Run();
        Chunks.Sort(tokens);
    }

    private void Run()
    {
        while (_at < _text.Length)
        {
            var character = _text[_at];
            if (character is ' ' or '\t')
            {
                _at++;
                _space = true;
            }
            else if (StartsNumber(character))
            {
                Number();
            }
            else if (char.IsLetter(character))
            {
                Word();
            }
            else
            {
                Sign(character);
            }
        }
    }

    private readonly bool StartsNumber(char character)
    {
        if (char.IsAsciiDigit(character))
            return true;

        // ".5A" is a number, "9V.5" is not: there the point ends a word or sentence.
        return character is '.' or ',' && _at + 1 < _text.Length && char.IsAsciiDigit(_text[_at + 1]) && (_space || !char.IsLetterOrDigit(Before()));
    }

    private readonly char Before() => _at > 0 ? _text[_at - 1] : ' ';

    private void Number()
    {
        if (DecimalText.TryRead(_text[_at..], out var value, out var length, out var grouping))
        {
            Add(TokenKind.Number, length, value: value, grouping: grouping);
            return;
        }

        var end = _at;
        while (end < _text.Length && char.IsAsciiDigit(_text[end]))
            end++;
        Add(TokenKind.Junk, Math.Max(1, end - _at));
    }

    private void Word()
    {
        var end = _at + 1;
        while (end < _text.Length && char.IsLetter(_text[end]))
            end++;

        // "d.c." and "a.c." are single letters with stops between them.
        if (end == _at + 1 && end + 1 < _text.Length && _text[end] == '.' && (_text[_at] | 0x20) is 'a' or 'd' && (_text[end + 1] | 0x20) == 'c'
            && (end + 2 == _text.Length || !char.IsLetterOrDigit(_text[end + 2])))
        {
            end += 2;
        }

        // "i/p" and "o/p" are one word each.
        if (end == _at + 1 && end + 1 < _text.Length && _text[end] == '/' && (_text[_at] | 0x20) is 'i' or 'o' && (_text[end + 1] | 0x20) == 'p')
            end += 2;

        var (meaning, factor) = Vocabulary.Meaning(_text[_at..end]);
        Add(TokenKind.Word, end - _at, meaning, factor);
    }

    private void Sign(char character)
    {
        var kind = character switch
        {
            '-' => TokenKind.Dash,
            '~' => TokenKind.Tilde,
            LabelText.Direct or '=' => TokenKind.DirectSign,
            LabelText.Alternating => TokenKind.AlternatingSign,
            '/' or '|' or '\\' => TokenKind.Slash,
            ',' => TokenKind.Comma,
            ';' => TokenKind.Semicolon,
            ':' => TokenKind.Colon,
            '+' => TokenKind.Plus,
            '×' or '*' => TokenKind.Times,
            '\u2026' => TokenKind.Dots,
            '(' or '[' or '{' => TokenKind.Open,
            ')' or ']' or '}' => TokenKind.Close,
            '"' => TokenKind.Quote,
            '\n' or '\r' => TokenKind.LineEnd,
            '.' => Repeats('.') > 1 ? TokenKind.Dots : TokenKind.Punctuation,
            '<' or '>' or '@' or '\'' or '!' or '?' or '#' or '&' or '_' or '\u2019' or '\u2018' or '•' or '·' => TokenKind.Punctuation,
            _ => TokenKind.Junk,
        };
        Add(kind, kind is TokenKind.Dots or TokenKind.DirectSign ? Repeats(character) : 1);
        if (kind == TokenKind.LineEnd)
            _space = true;
    }

    private readonly int Repeats(char character)
    {
        var count = 1;
        while (_at + count < _text.Length && _text[_at + count] == character)
            count++;
        return count;
    }

    private readonly bool IsAt(int length) =>
        _text[_at] == '@' || (length == 2 && (_text[_at] | 0x20) == 'a' && (_text[_at + 1] | 0x20) == 't');

    private void Add(TokenKind kind, int length, WordMeaning meaning = WordMeaning.Unknown, decimal value = 0, bool grouping = false)
    {
        ref var token = ref _tokens.Add();
        token = new Token { Kind = kind, Meaning = meaning, SpaceBefore = _space, Grouping = grouping, Start = _at, Length = length, Value = value, IsAt = IsAt(length) };
        _at += length;
        _space = false;
    }
}
