using System.Text.Json;

namespace Loadmark.Shapes;

/// <summary>
/// The one declaration of an object of JSON: its members, each with its key, where its value comes from and what it means. It writes the
/// object, and the OpenAPI document is made of it. It is put together once, where it is declared, and does not change after that.
/// </summary>
/// <typeparam name="T">What is written as such an object.</typeparam>
/// <param name="name">The name that it is referred to by; empty where it is described in the place where it stands.</param>
/// <param name="about">What it is, in a sentence.</param>
internal sealed class JsonShape<T>(string name, string about) : JsonValue<T>, IShape
{
    private readonly List<MemberDescription> _members = [];
    private readonly List<Action<Utf8JsonWriter, T>> _writers = [];

    /// <inheritdoc/>
    public string Name => name;

    /// <inheritdoc/>
    public string About => about;

    /// <inheritdoc/>
    public IReadOnlyList<MemberDescription> Members => _members;

    /// <inheritdoc/>
    public override ValueDescription Description => new(JsonKind.Object, "") { Shape = this };

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter json, T value)
    {
        json.WriteStartObject();
        WriteMembers(json, value);
        json.WriteEndObject();
    }

    /// <summary>Writes the members only, into an object already begun.</summary>
    /// <param name="json">Where to.</param>
    /// <param name="value">What is written.</param>
    public void WriteMembers(Utf8JsonWriter json, T value)
    {
        foreach (var write in _writers)
            write(json, value);
    }

    /// <summary>Adds a text.</summary>
    public JsonShape<T> Text(string key, Func<T, string?> of, string about, Presence presence = Presence.Always) =>
        AddText(key, of, new ValueDescription(JsonKind.Text, about), presence);

    /// <summary>Adds one of some words.</summary>
    public JsonShape<T> Word(
        string key, Func<T, string?> of, Func<IReadOnlyList<string>> words, string about, Presence presence = Presence.Always) =>
        AddText(key, of, new ValueDescription(JsonKind.Text, about) { Words = words }, presence);

    /// <summary>Adds the word that stands for a value of an enumeration.</summary>
    /// <param name="key">The member's key.</param>
    /// <param name="of">The value.</param>
    /// <param name="word">The word for each value.</param>
    /// <param name="about">What the member means.</param>
    public JsonShape<T> Word<TEnum>(string key, Func<T, TEnum> of, Func<TEnum, string> word, string about)
        where TEnum : struct, Enum =>
        Word(key, whole => word(of(whole)), () => WordsOf(word), about);

    /// <summary>Adds the word that stands for a value of an enumeration, which need not be known.</summary>
    public JsonShape<T> Word<TEnum>(
        string key, Func<T, TEnum?> of, Func<TEnum, string> word, string about, Presence presence = Presence.OrNull)
        where TEnum : struct, Enum =>
        Word(key, whole => of(whole) is { } value ? word(value) : null, () => WordsOf(word), about, presence);

    /// <summary>Adds a moment, as a text (ISO 8601, UTC).</summary>
    public JsonShape<T> Moment(string key, Func<T, string> of, string about) =>
        AddText(key, of, new ValueDescription(JsonKind.Moment, about), Presence.Always);

    /// <summary>Adds a UUID.</summary>
    public JsonShape<T> Uuid(string key, Func<T, Guid> of, string about)
    {
        var encoded = Encode(key);
        return Add(key, new ValueDescription(JsonKind.Uuid, about), Presence.Always, (json, whole) => json.WriteString(encoded, of(whole)));
    }

    /// <summary>Adds a number in the unit that the description names, rounded to nine decimals.</summary>
    public JsonShape<T> Figure(string key, Func<T, decimal?> of, string about, Presence presence = Presence.Always)
    {
        var encoded = Encode(key);
        return Add(key, new ValueDescription(JsonKind.Number, about), presence, (json, whole) =>
        {
            var value = of(whole);
            if (value is null && presence == Presence.OrAbsent)
                return;
            json.WritePropertyName(encoded);
            json.WriteFigure(value);
        });
    }

    /// <summary>Adds a whole number from 0.</summary>
    public JsonShape<T> Count(string key, Func<T, long?> of, string about, Presence presence = Presence.Always)
    {
        var encoded = Encode(key);
        return Add(key, new ValueDescription(JsonKind.Count, about), presence, (json, whole) =>
        {
            if (of(whole) is { } count)
                json.WriteNumber(encoded, count);
            else if (presence != Presence.OrAbsent)
                json.WriteNull(encoded);
        });
    }

    /// <summary>Adds a whole number from 0 that may need all 64 bits.</summary>
    public JsonShape<T> Seed(string key, Func<T, ulong> of, string about)
    {
        var encoded = Encode(key);
        return Add(key, new ValueDescription(JsonKind.Seed, about), Presence.Always, (json, whole) => json.WriteNumber(encoded, of(whole)));
    }

    /// <summary>Adds true or false.</summary>
    public JsonShape<T> Flag(string key, Func<T, bool?> of, string about, Presence presence = Presence.Always)
    {
        var encoded = Encode(key);
        return Add(key, new ValueDescription(JsonKind.Flag, about), presence, (json, whole) =>
        {
            if (of(whole) is { } flag)
                json.WriteBoolean(encoded, flag);
            else if (presence != Presence.OrAbsent)
                json.WriteNull(encoded);
        });
    }

    /// <summary>Adds a list of texts.</summary>
    public JsonShape<T> Texts(string key, Func<T, IEnumerable<string>> of, string about) =>
        List(key, of, JsonText.Item, about);

    /// <summary>Adds a list.</summary>
    /// <param name="key">Its key.</param>
    /// <param name="of">Its items; null where they are not known.</param>
    /// <param name="item">What each item is.</param>
    /// <param name="about">What the list means.</param>
    /// <param name="presence">What stands there where the items are not known.</param>
    public JsonShape<T> List<TItem>(
        string key, Func<T, IEnumerable<TItem>?> of, JsonValue<TItem> item, string about, Presence presence = Presence.Always)
    {
        var encoded = Encode(key);
        return Add(key, new ValueDescription(JsonKind.List, about) { Items = item.Description }, presence, (json, whole) =>
        {
            if (of(whole) is { } items)
            {
                json.WriteStartArray(encoded);
                if (items is IReadOnlyList<TItem> list)
                {
                    for (var index = 0; index < list.Count; index++)
                        item.Write(json, list[index]);
                }
                else
                {
                    foreach (var one in items)
                        item.Write(json, one);
                }

                json.WriteEndArray();
            }
            else if (presence != Presence.OrAbsent)
            {
                json.WriteNull(encoded);
            }
        });
    }

    /// <summary>Adds a value that describes itself, such as an object.</summary>
    public JsonShape<T> Value<TValue>(string key, Func<T, TValue?> of, JsonValue<TValue> value, Presence presence = Presence.Always)
    {
        var encoded = Encode(key);
        return Add(key, value.Description, presence, (json, whole) =>
        {
            if (of(whole) is { } part)
            {
                json.WritePropertyName(encoded);
                value.Write(json, part);
            }
            else if (presence != Presence.OrAbsent)
            {
                json.WriteNull(encoded);
            }
        });
    }

    /// <summary>Adds all members of another shape.</summary>
    /// <param name="part">The other shape; its name does not matter.</param>
    /// <param name="of">What is written by it.</param>
    public JsonShape<T> Include<TPart>(JsonShape<TPart> part, Func<T, TPart> of)
    {
        _members.AddRange(part._members);
        _writers.Add((json, whole) => part.WriteMembers(json, of(whole)));
        return this;
    }

    /// <summary>Adds members that stand there together, or not at all.</summary>
    /// <param name="condition">Whether they stand there.</param>
    /// <param name="add">Adds them.</param>
    public JsonShape<T> When(Func<T, bool> condition, Action<JsonShape<T>> add)
    {
        var some = new JsonShape<T>("", "");
        add(some);
        _members.AddRange(some._members.Select(static member => member with { IsRequired = false }));
        _writers.Add((json, whole) =>
        {
            if (condition(whole))
                some.WriteMembers(json, whole);
        });
        return this;
    }

    private static IReadOnlyList<string> WordsOf<TEnum>(Func<TEnum, string> word)
        where TEnum : struct, Enum =>
        [.. Enum.GetValues<TEnum>().Select(word)];

    private static JsonEncodedText Encode(string key) => JsonEncodedText.Encode(key, JsonFormat.Options.Encoder);

    private JsonShape<T> AddText(string key, Func<T, string?> of, ValueDescription description, Presence presence)
    {
        var encoded = Encode(key);
        return Add(key, description, presence, (json, whole) =>
        {
            var text = of(whole);
            if (text is not null || presence != Presence.OrAbsent)
                json.WriteString(encoded, text);
        });
    }

    private JsonShape<T> Add(string key, ValueDescription description, Presence presence, Action<Utf8JsonWriter, T> write)
    {
        _members.Add(new MemberDescription(key, description with { OrNull = presence == Presence.OrNull }, presence != Presence.OrAbsent));
        _writers.Add(write);
        return this;
    }
}
