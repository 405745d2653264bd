using System.Globalization;
using System.Text;
using Loadmark.Files.Trees;
using Loadmark.Files.Keys;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Loadmark.Files.Writing;

/// <summary>Writes keys and values through the YAML library, with quotes only where a text needs them.</summary>
internal sealed class YamlWriter
{
    private readonly StringBuilder _text = new();
    private readonly IEmitter _emitter;

    /// <summary>Begins a document that becomes a text.</summary>
    public YamlWriter()
        : this(null)
    {
    }

    /// <summary>Begins a document that goes elsewhere.</summary>
    /// <param name="emitter">What takes it; null when it is to become a text.</param>
    public YamlWriter(IEmitter? emitter)
    {
        var output = new StringWriter(_text, CultureInfo.InvariantCulture) { NewLine = "\n" };
        _emitter = emitter ?? new Emitter(
            output,
            new EmitterSettings().WithIndentedSequences().WithBestWidth(int.MaxValue).WithMaxSimpleKeyLength(1000).WithNewLine("\n"));
        _emitter.Emit(new StreamStart());
        _emitter.Emit(new DocumentStart(null, null, isImplicit: true));
    }

    /// <summary>Begins a group of keys.</summary>
    public void BeginGroup(bool flow = false) =>
        _emitter.Emit(new MappingStart(AnchorName.Empty, TagName.Empty, isImplicit: true, flow ? MappingStyle.Flow : MappingStyle.Block));

    /// <summary>Ends a group of keys.</summary>
    public void EndGroup() => _emitter.Emit(new MappingEnd());

    /// <summary>Begins a list.</summary>
    public void BeginList(bool flow) =>
        _emitter.Emit(
            new SequenceStart(AnchorName.Empty, TagName.Empty, isImplicit: true, flow ? SequenceStyle.Flow : SequenceStyle.Block));

    /// <summary>Ends a list.</summary>
    public void EndList() => _emitter.Emit(new SequenceEnd());

    /// <summary>Writes a key, or a value that has no key.</summary>
    public void Text(string text, bool numberIsFine = false)
    {
        var plain = PlainText.Suits(text, numberIsFine);
        _emitter.Emit(
            new Scalar(
                AnchorName.Empty,
                TagName.Empty,
                text,
                plain ? ScalarStyle.Plain : ScalarStyle.DoubleQuoted,
                isPlainImplicit: plain,
                isQuotedImplicit: true));
    }

    /// <summary>Writes a key with a text, unless the text is null.</summary>
    public void Entry(string key, string? value, bool numberIsFine = false)
    {
        if (value is null)
            return;
        Text(key);
        Text(value, numberIsFine);
    }

    /// <summary>Writes a key with true or false, unless it is null.</summary>
    public void Entry(string key, bool? value)
    {
        if (value is null)
            return;
        Text(key);
        Bare(value.Value ? "true" : "false");
    }

    /// <summary>Writes the fields of a thing that something is said of.</summary>
    public void Fields<T>(T thing, FieldTable<T> table)
    {
        foreach (var field in table.Fields)
            Field(thing, field);
    }

    /// <summary>Writes a field of a thing, unless nothing is said of it.</summary>
    public void Field<T>(T thing, FieldKey<T> field)
    {
        if (field.TextOf(thing) is not { } text)
            return;
        Text(field.Name);
        if (field.Form == ValueForm.YesNo)
            Bare(text);
        else
            Text(text, numberIsFine: field.Form == ValueForm.Number);
    }

    /// <summary>Writes a key that says: there is none.</summary>
    public void Nothing(string key)
    {
        Text(key);
        Bare("null");
    }

    /// <summary>Writes what was kept as a tree.</summary>
    public void Tree(Node node)
    {
        switch (node)
        {
            case ScalarNode scalar:
                _emitter.Emit(
                    new Scalar(
                        AnchorName.Empty,
                        TagName.Empty,
                        scalar.Value,
                        scalar.IsPlain ? ScalarStyle.Plain : ScalarStyle.DoubleQuoted,
                        isPlainImplicit: scalar.IsPlain,
                        isQuotedImplicit: true));
                break;
            case SequenceNode sequence:
                BeginList(sequence.IsFlow);
                sequence.Items.ForEach(Tree);
                EndList();
                break;
            case MappingNode mapping:
                BeginGroup(mapping.IsFlow);
                foreach (var (key, value) in mapping.Entries)
                {
                    Tree(key);
                    Tree(value);
                }

                EndGroup();
                break;
        }
    }

    /// <summary>Writes a key with one text, or a list of them in brackets when there are more.</summary>
    public void OneOrList(string key, IReadOnlyList<string> texts)
    {
        if (texts.Count == 1)
        {
            Entry(key, texts[0]);
            return;
        }

        Text(key);
        BeginList(flow: true);
        foreach (var text in texts)
            Text(text);
        EndList();
    }

    /// <summary>Ends the document.</summary>
    /// <returns>All that was written as text.</returns>
    public string Finish()
    {
        _emitter.Emit(new DocumentEnd(isImplicit: true));
        _emitter.Emit(new StreamEnd());
        return _text.ToString();
    }

    /// <summary>Writes a word of YAML, which is no text.</summary>
    private void Bare(string word) =>
        _emitter.Emit(new Scalar(AnchorName.Empty, TagName.Empty, word, ScalarStyle.Plain, isPlainImplicit: true, isQuotedImplicit: false));
}
